/** Texts for the pictures. Each has a title, and lines in the form that the desk uses. */
export const texts: readonly { readonly title: string; readonly text: string }[] = [
  {
    title: 'The Lost Net',
    text: 'Bram had a big net. He left it on the dock. The wind got up in the night and the net fell in.\n\nAt six Ines ran to the dock. The net was not on its hook. "It is lost," said Bram. But Otto had a long rod with a hook on the end. He let it sink. He felt it snag. Up, up, up it went, and the net was full of fish.',
  },
  {
    title: 'A Lamp in the Fog',
    text: 'The fog crept in at dusk. Wilma lit the lamp on the end of the pier and went to bed.\n\nLate in the night she woke. A horn blew, far out and low. The lamp was dim, so she ran down with a can and filled it. The flame rose. Out on the black sea the Marigold turned her bow and came home.',
  },
  {
    title: 'Market Day',
    text: 'On market day the quay is full of noise. Boxes of herring and crab stand in rows along the wall. Mr. Falk buys bread, cheese and a jar of honey for the school. A gull hops behind him, hoping for a crust.\n\nAt noon the rain starts. Everybody crowds under the blue roof and shares what they bought.',
  },
  {
    title: 'The New Ferry Bell',
    text: 'The crew of the Marigold have a new bell. It was cast in a foundry across the water from the brass of an old propeller. On Saturday the harbour master rang it for the first time, and people listened from the lighthouse to the school.\n\nThe old bell cracked last winter when a freezing wave struck the bridge. It will hang in the museum, where children may ring it gently.',
  },
  {
    title: 'How the Tide Works',
    text: 'Twice a day the sea comes in and twice a day it goes out. The moon pulls at the water, and the water follows. When the sun and the moon pull together, the tide is high and the boats rise up to the top of the wall. Then it drains away again, and the mud is full of shells.',
  },
];
