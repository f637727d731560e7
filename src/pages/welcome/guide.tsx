import { say } from '../../wording/say.ts';

/** What the product does, in four pictures (`npm run pictures` takes them). */
export function Guide() {
  const parts = [
    { picture: 'shade', text: say('welcome.guideShade') },
    { picture: 'panel', text: say('welcome.guidePanel') },
    { picture: 'word', text: say('welcome.guideWord') },
    { picture: 'desk', text: say('welcome.guideDesk') },
  ];
  return (
    <section class="guide" aria-labelledby="guide-title">
      <h2 id="guide-title">{say('welcome.guide')}</h2>
      <ol class="guide-parts">
        {parts.map(({ picture, text }) => (
          <li key={picture}>
            <img src={`/guide/${picture}.png`} alt="" loading="lazy" />
            <p>{text}</p>
          </li>
        ))}
      </ol>
      <p class="quiet">{say('welcome.guideDeference')}</p>
    </section>
  );
}
