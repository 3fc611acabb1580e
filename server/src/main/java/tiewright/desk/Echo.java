package tiewright.desk;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.RetirementScore;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/**
 * Who has won by these numbers? Said back before a card counts, so that swapped columns are noticed.
 *
 * @param games as the table would hold them
 * @param winner empty when the rubber is void
 */
public record Echo(
        TieId tie, RubberNo rubber, List<Score> games, How how, Optional<Side> winner, Optional<ClubId> club) {
    public Echo {
        games = List.copyOf(games);
    }

    /** How a retired rubber would count in each published way, home first; empty for one that nobody gave up. */
    public static Map<RetirementScore, List<Score>> ways(Event event, RubberNo rubber, List<Score> games, How how) {
        Map<RetirementScore, List<Score>> ways = new EnumMap<>(RetirementScore.class);
        if (how.isRetirement()) {
            for (RetirementScore way : RetirementScore.values()) {
                Reading reading =
                        Reading.of(event.conditions().with(Setting.RETIREMENT_SCORE, way.code()), rubber, games, how);
                if (reading.faults().isEmpty()) {
                    ways.put(way, reading.counted());
                }
            }
        }
        return ways;
    }

    /** Empty when there is no such tie or a card cannot read so; then {@link RecordCard} gives the reasons. */
    public static Optional<Echo> of(Event event, TieId tie, RubberNo rubber, List<Score> games, How how) {
        Reading reading = Reading.of(event.conditions(), rubber, games, how);
        if (!reading.faults().isEmpty()) {
            return Optional.empty();
        }
        RubberScore score = new RubberScore(rubber, reading.counted(), how);
        return event.tie(tie)
                .map(found -> new Echo(
                        tie,
                        rubber,
                        score.games(),
                        how,
                        score.winner(),
                        score.winner().flatMap(found::club)));
    }
}
