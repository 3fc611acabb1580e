package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What went wrong and how officials decided it, in the order of entry.
 *
 * @param signedAt when the table of each pool was signed: then the time for objections is over
 */
public record Disputes(
        List<OfficialFact.CorrectionDecided> corrections,
        List<OfficialFact.CaseRuled> cases,
        List<OfficialFact.TwoPeople> namesakes,
        List<Protest> protests,
        Map<String, Instant> signedAt) {
    static final Disputes NONE = new Disputes(List.of(), List.of(), List.of(), List.of(), Map.of());

    /**
     * A protest and what became of it.
     *
     * @param at when it was handed in
     * @param decided empty while it waits
     */
    public record Protest(
            OfficialFact.ProtestMade made,
            Instant at,
            Optional<OfficialFact.ProtestDecided> decided,
            Optional<Instant> decidedAt) {}

    public Disputes {
        corrections = List.copyOf(corrections);
        cases = List.copyOf(cases);
        namesakes = List.copyOf(namesakes);
        protests = List.copyOf(protests);
        signedAt = Map.copyOf(signedAt);
    }

    public Optional<Protest> protest(int number) {
        return protests.stream()
                .filter(protest -> protest.made().number() == number)
                .findFirst();
    }

    public List<Protest> openProtests() {
        return protests.stream().filter(protest -> protest.decided().isEmpty()).toList();
    }

    Disputes with(OfficialFact.CorrectionDecided correction) {
        return new Disputes(and(corrections, correction), cases, namesakes, protests, signedAt);
    }

    Disputes with(OfficialFact.CaseRuled ruled) {
        return new Disputes(corrections, and(cases, ruled), namesakes, protests, signedAt);
    }

    /** It was said that these are two people, although their names are alike. */
    public boolean areTwoPeople(PlayerId player, PlayerId other) {
        return namesakes.stream().anyMatch(said -> said.isOf(player, other));
    }

    Disputes with(OfficialFact.TwoPeople said) {
        return new Disputes(corrections, cases, and(namesakes, said), protests, signedAt);
    }

    Disputes with(OfficialFact.ProtestMade made, Instant at) {
        return new Disputes(
                corrections,
                cases,
                namesakes,
                and(protests, new Protest(made, at, Optional.empty(), Optional.empty())),
                signedAt);
    }

    Disputes with(OfficialFact.ProtestDecided decided, Instant at) {
        return new Disputes(
                corrections,
                cases,
                namesakes,
                protests.stream()
                        .map(protest -> protest.made().number() == decided.number()
                                ? new Protest(protest.made(), protest.at(), Optional.of(decided), Optional.of(at))
                                : protest)
                        .toList(),
                signedAt);
    }

    Disputes withSigned(String pool, Instant at) {
        Map<String, Instant> more = new HashMap<>(signedAt);
        more.put(pool, at);
        return new Disputes(corrections, cases, namesakes, protests, more);
    }

    private static <T> List<T> and(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }
}
