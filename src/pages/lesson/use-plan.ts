import { useEffect, useRef, useState } from 'preact/hooks';
import { keepLesson, type LessonName, loadLesson } from '../../host/store/lessons-store.ts';
import { type LessonPlan, startPlan } from '../../lesson/index.ts';

/** The plan of a lesson, with its change and undo functions. */
export interface KeptPlan {
  readonly plan: LessonPlan;
  change(change: (plan: LessonPlan) => LessonPlan): void;
  /** Undoes the last change. Null if there is no change to undo. */
  readonly undo: (() => void) | null;
}

/** The saved plan of a lesson, or a new plan. Every change is saved at once. Null until the plan is read. */
export function usePlan({ group, passage }: LessonName): KeptPlan | null {
  const [plans, setPlans] = useState<readonly LessonPlan[] | null>(null);
  const last = useRef<readonly LessonPlan[] | null>(null);
  useEffect(() => {
    let current = true;
    // If a lesson cannot be read, no new plan is started, since its first change would overwrite the saved lesson.
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

/** Returns a number for a new sheet, short enough to be written down. */
export function anyNumber(): number {
  return 1 + Math.floor(Math.random() * 9999);
}
