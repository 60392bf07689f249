import type { APIRoute, GetStaticPaths } from 'astro';
import { cardSizes, type CardSize } from '../../cards/formats.ts';
import { cardSetsOf } from '../../cards/select.ts';
import { library } from '../_data.ts';
import { pressedCards } from '../_press/press.ts';

const sizes = Object.keys(cardSizes) as CardSize[];

export const getStaticPaths = (() =>
  cardSetsOf(library).flatMap(({ id: set }) =>
    sizes.map((size) => ({ params: { deck: `${set}.${size}` }, props: { set, size } })),
  )) satisfies GetStaticPaths;

/** A card set as a PDF; the build fails naming every card that does not fit. */
export const GET: APIRoute<{ set: string; size: CardSize }> = async ({ props }) =>
  new Response((await pressedCards(props.set)).files[props.size], {
    headers: { 'content-type': 'application/pdf' },
  });
