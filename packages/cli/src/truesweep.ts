#!/usr/bin/env node
import { Command } from 'commander';

new Command('truesweep').version('0.1.0').parse();
