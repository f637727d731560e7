import { useEffect, useRef, useState } from 'preact/hooks';
import { keepLesson, type LessonName, loadLesson } from '../../host/store/lessons-store.ts';
import { type LessonPlan, startPlan } from '../../lesson/index.ts';

/** The plan of a lesson, and its changes on this page. */
export interface KeptPlan {
  readonly plan: LessonPlan;
  change(change: (plan: LessonPlan) => LessonPlan): void;
  /** Takes back the last change; null when there is none. */
  readonly undo: (() => void) | null;
}

/** The saved plan of a lesson, or a new plan. Every change is saved at once. Null until the plan is read. */
export function usePlan({ group, passage }: LessonName): KeptPlan | null {
  const [plans, setPlans] = useState<readonly LessonPlan[] | null>(null);
  const last = useRef<readonly LessonPlan[] | null>(null);
  useEffect(() => {
    let current = true;
    // A lesson that cannot be read is not begun anew: its next change would take the place of the kept one.
    void loadLesson({ group, passage }).then((kept) => {
      if (!current) return;
      last.current = [kept ?? startPlan(anyNumber())];
      setPlans(last.current);
    });
    return () => {
      current = false;
    };
  }, [group, passage]);
  if (!plans) return null;
  const show = (changed: readonly LessonPlan[]): void => {
    last.current = changed;
    setPlans(changed);
    void keepLesson({ group, passage }, changed.at(-1)!);
  };
  return {
    plan: plans.at(-1)!,
    change: (change) => show([...last.current!, change(last.current!.at(-1)!)].slice(-DEPTH)),
    undo: plans.length > 1 ? () => show(last.current!.slice(0, -1)) : null,
  };
}

const DEPTH = 100;

/** The number of a new sheet, short enough to be written down. */
export function anyNumber(): number {
  return 1 + Math.floor(Math.random() * 9999);
}
