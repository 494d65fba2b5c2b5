/** The part of a dedicated worker's global that the workers use. */
export interface WorkerScope<Request, Answer> {
  addEventListener(type: 'message', listener: (event: { readonly data: Request }) => void): void;
  postMessage(answer: Answer, transfer: readonly Transferable[]): void;
}

/** The worker's own global; the page's types describe a window. */
export const workerScope = <Request, Answer>(): WorkerScope<Request, Answer> =>
  globalThis as unknown as WorkerScope<Request, Answer>;
