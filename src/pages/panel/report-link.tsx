import { say } from '../../wording/say.ts';

/** Leads to the report on a shaded tab: its climb, and everything else there is to say of it. */
export function ReportLink({ tab }: { tab: number }) {
  return (
    <a class="tool" href={`/report.html#tab/${tab}`} target="_blank" rel="noopener">
      {say('panel.climbAndReport')}
    </a>
  );
}
