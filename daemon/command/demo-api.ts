import { Problem } from '../contract/problem.ts';
import {
  type RouteName,
  type RouteReply,
  type RouteSend,
  type Routes,
  routes,
} from '../contract/routes.ts';

/** What a call sends: only the parts that its route takes. */
type Sent<N extends RouteName> = {
  [K in keyof RouteSend<N> as K extends keyof Routes[N] ? K : never]: RouteSend<N>[K];
};

/** Calls the daemon over HTTP as the page in a browser would. */
export type Api = <N extends RouteName>(name: N, sent: Sent<N>) => Promise<RouteReply<N>>;

/**
 * A caller of the daemon's HTTP interface.
 *
 * @param base - `http://127.0.0.1:8080`
 * @returns calls one route; rejects with the problem's detail and advice when it is refused
 */
export function apiAt(base: string): Api {
  return async (name, sent) => {
    const route = routes[name];
    const { params, body } = sent as { params?: Record<string, string>; body?: unknown };
    const path = route.path.replace(/:(\w+)/g, (_, key: string) =>
      encodeURIComponent(params?.[key] ?? ''),
    );
    const response = await fetch(`${base}${path}`, {
      method: route.method,
      ...(body === undefined
        ? {}
        : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
    });
    const reply: unknown = await response.json();
    if (!response.ok) {
      const problem = Problem.safeParse(reply);
      const why = problem.success
        ? `${problem.data.detail} ${problem.data.doThis}`
        : JSON.stringify(reply);
      throw new Error(`${route.method} ${path} was answered with ${response.status}: ${why}`);
    }
    return route.reply.parse(reply) as RouteReply<typeof name>;
  };
}
