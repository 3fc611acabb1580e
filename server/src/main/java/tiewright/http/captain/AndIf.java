package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.http.views.ProposalView;
import tiewright.http.visit.Visit;
import tiewright.lineup.Aim;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.tie.WhatIf;
import tiewright.wording.LineupWords;
import tiewright.wording.Words;

/** "And if" somebody cannot play, or fewer come: one line each with what the best sheet is then worth. */
final class AndIf {
    private static final int SHOWN = 3;

    private final LineupInputs inputs;
    private final Aim.Kind aim;
    private final Words words;
    private final LineupWords said;
    private final GivenNames names;

    AndIf(Visit visit, LineupInputs inputs, Aim.Kind aim) {
        this.inputs = inputs;
        this.aim = aim;
        this.words = visit.words();
        this.said = LineupWords.inWholes(words);
        this.names = new GivenNames(visit.event(), visit.event().squad(visit.club()));
    }

    /** @param decider who would play it, as a line of its own */
    ProposalView.Part part(Optional<ProposalView.Fold> decider) {
        List<ProposalView.Row> rows = new ArrayList<>();
        List<ProposalView.Fold> folds = new ArrayList<>();
        WhatIf.of(inputs.problem()).ifPresent(what -> {
            double all =
                    what.sizes().stream().mapToDouble(WhatIf.Size::worth).max().orElse(0);
            what.absences().stream().limit(SHOWN).map(one -> absence(one, all)).forEach(rows::add);
            if (what.absences().size() > SHOWN) {
                folds.add(others(what, all));
            }
            what.sizes().stream()
                    .filter(size -> !size.without().isEmpty())
                    .sorted(Comparator.comparingInt(WhatIf.Size::players).reversed())
                    .map(this::size)
                    .forEach(rows::add);
        });
        decider.ifPresent(folds::add);
        return new ProposalView.Part(words.say("page-captain.and-if"), rows, folds);
    }

    private ProposalView.Row absence(WhatIf.Absence one, double all) {
        return new ProposalView.Row(
                words.say("page-captain.cannot-play", "player", names.of(one.player())), "", worth(all - one.cost()));
    }

    private ProposalView.Fold others(WhatIf what, double all) {
        List<WhatIf.Absence> others =
                what.absences().subList(SHOWN, what.absences().size());
        return ProposalView.Fold.of(
                words.say("page-captain.anybody-else-cannot-play"),
                words.say(
                        "page-captain.at-least",
                        "worth",
                        worth(all - others.get(0).cost())),
                others.stream().map(one -> said.absence(one, aim)).toList());
    }

    private ProposalView.Row size(WhatIf.Size size) {
        String without = size.without().stream().map(names::of).collect(Collectors.joining(", "));
        return new ProposalView.Row(
                words.say("page-captain.so-many-come", "players", size.players()),
                words.say(
                        size.everyChoiceTried() ? "page-captain.best-without" : "page-captain.strongest-without",
                        "without",
                        without),
                worth(size.worth()));
    }

    private String worth(double worth) {
        return switch (aim) {
            case WIN, QUALIFY -> LineupWords.whole(Math.max(0, worth));
            case RUBBERS -> LineupWords.worth(worth, aim);
        };
    }
}
