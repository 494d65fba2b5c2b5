import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Plan } from '../plan/schema/plan.ts';
import { writePlan } from '../plan/write-plan.ts';

/** SHA-256 of the plan's file text, in hexadecimal: the same plan gives the same mark on every machine. */
export function planHash(plan: Plan): string {
  return bytesToHex(sha256(utf8ToBytes(writePlan(plan))));
}

/** First characters of a hash, in groups that can be read aloud. */
export function shortHash(hash: string): string {
  return `${hash.slice(0, 4)} ${hash.slice(4, 8)} ${hash.slice(8, 12)}`;
}
