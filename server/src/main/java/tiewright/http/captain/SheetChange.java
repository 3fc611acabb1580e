package tiewright.http.captain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.lineup.tie.ProposedSheet;
import tiewright.wording.Words;

/** One sheet told as what is different in it from another: two who change over, one for another, rubbers that change places. */
record SheetChange(Words words, GivenNames names) {
    /** Rubber by rubber where it fits no shorter words; empty where nothing differs. */
    String said(ProposedSheet first, ProposedSheet other) {
        Map<RubberNo, Optional<Pair>> before = new HashMap<>();
        first.lines().forEach(line -> before.put(line.rubber(), line.pair()));
        List<ProposedSheet.Line> changed = other.lines().stream()
                .filter(line -> !line.pair().equals(before.get(line.rubber())))
                .toList();
        List<Pair> old = changed.stream()
                .flatMap(line -> before.getOrDefault(line.rubber(), Optional.empty()).stream())
                .toList();
        List<Pair> now = changed.stream().flatMap(line -> line.pair().stream()).toList();
        if (changed.size() == 2 && old.size() == 2 && now.size() == 2) {
            return places(changed, old, now).or(() -> swap(old, now)).orElseGet(() -> plainly(changed));
        }
        return changed.size() == 1 && old.size() == 1 && now.size() == 1
                ? instead(changed.get(0).rubber(), old.get(0), now.get(0)).orElseGet(() -> plainly(changed))
                : plainly(changed);
    }

    private Optional<String> places(List<ProposedSheet.Line> changed, List<Pair> old, List<Pair> now) {
        return old.get(0).equals(now.get(1)) && old.get(1).equals(now.get(0))
                ? Optional.of(words.say(
                        "page-captain.rubbers-change-places",
                        "one",
                        changed.get(0).rubber(),
                        "other",
                        changed.get(1).rubber()))
                : Optional.empty();
    }

    private Optional<String> swap(List<Pair> old, List<Pair> now) {
        for (PlayerId one : old.get(0).players()) {
            for (PlayerId other : old.get(1).players()) {
                if (now.get(0).equals(Pair.of(old.get(0).partnerOf(one), other))
                        && now.get(1).equals(Pair.of(old.get(1).partnerOf(other), one))) {
                    return Optional.of(words.say("page-captain.swap", "one", names.of(one), "other", names.of(other)));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> instead(RubberNo rubber, Pair old, Pair now) {
        for (PlayerId out : old.players()) {
            if (now.has(old.partnerOf(out))) {
                return Optional.of(words.say(
                        "page-captain.one-for-another",
                        "one",
                        names.of(now.partnerOf(old.partnerOf(out))),
                        "other",
                        names.of(out),
                        "rubber",
                        rubber));
            }
        }
        return Optional.empty();
    }

    private String plainly(List<ProposedSheet.Line> changed) {
        List<String> said = new ArrayList<>();
        for (ProposedSheet.Line line : changed) {
            said.add(words.say(
                    "page-captain.rubber-is-now",
                    "rubber",
                    line.rubber(),
                    "pair",
                    line.pair().map(pair -> names.of(pair.players())).orElse(words.say("page-captain.no-pair"))));
        }
        return String.join("; ", said);
    }
}
