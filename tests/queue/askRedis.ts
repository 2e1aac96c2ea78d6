import { once } from 'node:events';
import { connect } from 'node:net';

/** A connection to Redis that a test speaks by itself, past the library. */
export interface RedisAsked {
  /** Sends a command and gives what it answers, as it comes over the line; answers of one line or one text only. */
  readonly ask: (...words: readonly string[]) => Promise<string>;
  readonly end: () => void;
}

/** Connects to a Redis at a port of 127.0.0.1. */
export async function askRedis(port: number): Promise<RedisAsked> {
  const socket = connect(port, '127.0.0.1').setNoDelay().setEncoding('utf8');
  await once(socket, 'connect');
  // Each question that is under way tells it.
  socket.on('error', () => {});
  const data = () =>
    Promise.race([
      once(socket, 'data'),
      once(socket, 'close').then(() => Promise.reject(new Error('Redis is gone.'))),
    ]) as Promise<[string]>;
  return {
    async ask(...words) {
      const sent = words.map((word) => `$${Buffer.byteLength(word)}\r\n${word}\r\n`).join('');
      const answer = data();
      socket.write(`*${words.length}\r\n${sent}`);
      let [text] = await answer;
      const length = /^\$(\d+)\r\n/.exec(text);
      while (length && Buffer.byteLength(text) < length[0].length + Number(length[1]) + 2)
        text += (await data())[0];
      if (text.startsWith('-')) throw new Error(text);
      return text.replace(/^(\$-?\d+\r\n|[:+])/, '').trimEnd();
    },
    end: () => socket.destroy(),
  };
}
