package tiewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.day.DayPlan;

/** A club's plan for its day, and what was promised to its players, in sentences. */
public final class DayWords {
    private final Words words;

    public DayWords(Words words) {
        this.words = words;
    }

    /** What the captain should know of the plan of a day. */
    public List<String> plan(DayPlan plan) {
        List<String> said = new ArrayList<>();
        plan.missing()
                .forEach((player, rubbers) ->
                        said.add(words.sentence("lineup.day-missing", Map.of("player", player, "rubbers", rubbers))));
        plan.tooMany()
                .forEach((player, ties) ->
                        said.add(words.sentence("lineup.day-in-a-row", Map.of("player", player, "ties", ties))));
        boolean all = plan.proven() && plan.allSheets();
        said.add(words.sentence(
                "lineup." + (said.isEmpty() ? "day-kept" : all ? "day-none-keeps" : "day-none-found"), Map.of()));
        String how = !plan.allSheets() ? "day-part" : plan.proven() ? "day-proven" : "day-searched";
        said.add(words.sentence("lineup." + how, Map.of()));
        return said;
    }

    /**
     * How a promise to one player stands.
     *
     * @param ties the names of the ties ahead in which the player is to rest
     * @param mayGoOn another tie may come
     */
    public String promise(PlayingDay.Line line, List<String> ties, boolean mayGoOn) {
        Map<String, Object> data = data(line, ties);
        List<String> codes = new ArrayList<>(List.of("promised"));
        if (line.named() > 0) {
            codes.add("promised-named");
        }
        codes.add("promised-" + line.standing().code());
        if (line.standing() == PlayingDay.Standing.GONE && mayGoOn) {
            codes.add("promised-perhaps");
        }
        return codes.stream()
                .map(code -> words.sentence("lineup." + code, data))
                .collect(Collectors.joining(" "));
    }

    private static Map<String, Object> data(PlayingDay.Line line, List<String> ties) {
        return Map.of(
                "player",
                line.player(),
                "promised",
                line.promised(),
                "had",
                line.had(),
                "missing",
                line.missing(),
                "named",
                line.named(),
                "left",
                line.left(),
                "granted",
                line.granted(),
                "ties",
                ties);
    }

    /** More is promised in all than can be played; empty where it is not. */
    public Optional<String> beyond(PlayingDay day) {
        return day.beyond() == 0
                ? Optional.empty()
                : Optional.of(words.sentence("lineup.promised-beyond", Map.of("rubbers", day.beyond())));
    }
}
