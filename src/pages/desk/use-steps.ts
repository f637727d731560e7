import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Steps, takeSlice, takeStepsInSlices } from '../../passage/take-steps.ts';

/**
 * Returns the result of work in steps; null without any work. Short work is done at once. Long work is done in slices,
 * so that the teacher can go on meanwhile. The last result stays until then. The same work is given as the same object.
 */
export function useSteps<T extends object>(steps: Steps<T> | null): T | null {
  const [late, setLate] = useState<{ readonly steps: Steps<T>; readonly made: T } | null>(null);
  const last = useRef<T | null>(null);
  const atOnce = useMemo(() => steps && takeSlice(steps), [steps]);
  useEffect(() => {
    if (!steps || atOnce) return;
    const controller = new AbortController();
    void takeStepsInSlices(steps, controller.signal).then((made) => made && setLate({ steps, made }));
    return () => controller.abort();
  }, [steps, atOnce]);
  const now = atOnce ?? (late?.steps === steps ? late.made : null);
  if (now || !steps) last.current = now;
  return last.current;
}
