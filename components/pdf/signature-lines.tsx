import { Text, View } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import { ink, type Look } from './look';
import { numbered } from './numbered';

type Props = {
  readonly signature: Sheet['pageTwo']['signature'];
  readonly validity: Sheet['pageTwo']['validity'];
  readonly look: Look;
};

const rule = { borderColor: ink.text } as const;

/** Boxes to tick and lines to sign; all empty. */
export function SignatureLines({ signature, validity, look }: Props) {
  const places = [
    { id: 'customer', words: signature.customer, share: 3 },
    { id: 'customer-date', words: signature.date, share: 1.4 },
    { id: 'company', words: signature.company, share: 3 },
    { id: 'company-date', words: signature.date, share: 1.4 },
  ];
  return (
    <View style={{ ...rule, borderTopWidth: 1.2, paddingTop: 3 }}>
      <View style={{ flexDirection: 'row', alignItems: 'flex-end' }}>
        <Text style={look.text}>{validity.line}</Text>
        <View style={{ ...rule, flex: 1, borderBottomWidth: 0.7, marginLeft: 4, marginBottom: 3 }} />
      </View>
      <View style={{ flexDirection: 'row', flexWrap: 'wrap', marginTop: 3 }}>
        <Text style={{ ...look.strong, marginRight: 8 }}>{signature.choose}</Text>
        {numbered(signature.choices).map(({ key, item }) => (
          <Tick key={key} words={item} look={look} />
        ))}
      </View>
      <Tick words={signature.told} look={look} />
      <View style={{ flexDirection: 'row', marginTop: 16 }}>
        {places.map((place, i) => (
          <View
            key={place.id}
            style={{ ...rule, flex: place.share, marginLeft: i === 0 ? 0 : 10, borderTopWidth: 0.7 }}
          >
            <Text style={look.evidence}>{place.words}</Text>
          </View>
        ))}
      </View>
    </View>
  );
}

function Tick({ words, look }: { readonly words: string; readonly look: Look }) {
  const box = { ...rule, width: 10, height: 10, borderWidth: 1, marginRight: 4, marginTop: 2.5 };
  return (
    <View style={{ flexDirection: 'row', marginRight: 12 }}>
      <View style={box} />
      <Text style={look.text}>{words}</Text>
    </View>
  );
}
