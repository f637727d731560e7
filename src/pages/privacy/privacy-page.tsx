import { Masthead } from '../../ui/masthead.tsx';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import { say } from '../../wording/say.ts';
import './privacy.css';

/** The statement on privacy: where the teacher's texts and groups are kept and who can see them. */
export function PrivacyPage() {
  return (
    <div class="page">
      <Masthead title={say('privacy.title')} />
      <main class="privacy" tabIndex={-1}>
        <section>
          <h2>{say('privacy.inShort')}</h2>
          <p>{say('privacy.onlyOnPress')}</p>
          <p>{say('privacy.names')}</p>
        </section>
        <section>
          <h2>{say('privacy.kept')}</h2>
          <p>{say('privacy.keptHere')}</p>
          <p>{say('privacy.copies')}</p>
          <p>{say('privacy.files')}</p>
        </section>
        <section>
          <h2>{say('privacy.read')}</h2>
          <p>{say('privacy.pdf')}</p>
          <p>{say('privacy.pictures')}</p>
          <p>{say('privacy.model')}</p>
        </section>
        <details>
          <summary>{say('privacy.forExperts')}</summary>
          <p>{say('privacy.whatPagesSee')}</p>
          <p>{say('privacy.privateMarks')}</p>
          <p>{say('privacy.whatCardsDo')}</p>
        </details>
        <p>
          <a class="plain" href="/NOTICE.txt">
            {say('privacy.licences')}
          </a>
        </p>
      </main>
    </div>
  );
}
