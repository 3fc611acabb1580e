package tiewright.http.captain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.http.views.SquadView;
import tiewright.rating.Ratings;
import tiewright.wording.Words;

/**
 * Every pair of the squad once, as stairs: each player's line meets the columns of all above.
 *
 * @param inWords an estimate for those who hear the page
 */
record PairStairs(GivenNames names, List<Player> squad, Function<Ratings.Line, String> inWords, Words words) {
    List<SquadView.Step> of(List<Ratings.Line> pairs) {
        Map<Pair, Ratings.Line> known = new HashMap<>();
        pairs.forEach(
                line -> known.put(Pair.of(line.players().get(0), line.players().get(1)), line));
        List<SquadView.Step> steps = new ArrayList<>();
        for (int i = 0; i < squad.size(); i++) {
            PlayerId own = squad.get(i).id();
            steps.add(new SquadView.Step(
                    names.of(own),
                    squad.subList(0, i).stream()
                            .map(above -> cell(known, above.id(), own))
                            .toList()));
        }
        return steps;
    }

    private SquadView.Cell cell(Map<Pair, Ratings.Line> known, PlayerId above, PlayerId own) {
        return Optional.ofNullable(known.get(Pair.of(above, own)))
                .map(line -> new SquadView.Cell(
                        SquadPictures.figure(line.estimate().mean()),
                        SquadPictures.isFirm(line.verdict()),
                        inWords.apply(line)))
                .orElseGet(() -> new SquadView.Cell(
                        "", false, words.say("page-captain.never-together", "pair", names.of(List.of(above, own)))));
    }
}
