import { defineRouteMiddleware } from '@astrojs/starlight/route-data';

/** Leaves of each group of the sidebar that a page is not in its front link: no page carries the list of all. */
export const onRequest = defineRouteMiddleware(({ locals }) => {
  const route = locals.starlightRoute;
  route.sidebar = route.sidebar.map((entry) => {
    if (entry.type === 'link' || hasCurrent(entry)) return entry;
    const front = firstLink(entry);
    return front ? { ...front, label: entry.label } : entry;
  });
});

type SidebarEntry = App.Locals['starlightRoute']['sidebar'][number];

function hasCurrent(entry: SidebarEntry): boolean {
  return entry.type === 'link' ? entry.isCurrent : entry.entries.some(hasCurrent);
}

function firstLink(entry: SidebarEntry): Extract<SidebarEntry, { type: 'link' }> | undefined {
  return entry.type === 'link' ? entry : entry.entries.map(firstLink).find(Boolean);
}
