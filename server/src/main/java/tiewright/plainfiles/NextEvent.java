package tiewright.plainfiles;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.OfRubber;
import tiewright.event.Pair;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.RubberScore;
import tiewright.event.Tie;
import tiewright.scoring.Format;

/** What an event leaves to the next one: its results as earlier games, and itself as a template without anybody in it. */
public final class NextEvent {
    private static final List<PlainFile> OF_A_TEMPLATE =
            List.of(PlainFile.EVENT, PlainFile.CONDITIONS, PlainFile.COURTS);

    private NextEvent() {}

    /**
     * Every game that was played to its end, as past-results.csv takes it, in the order of the ties; players by their codes. Walkovers,
     * retirements and rubbers that count nowhere say nothing of strength and are left out.
     *
     * @throws IllegalArgumentException if the event was never described: its games have no date
     */
    public static String pastResults(Event event) {
        LocalDate date = event.about()
                .orElseThrow(() -> new IllegalArgumentException("the event has no name and date yet"))
                .date();
        List<PastGame> games = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            event.progress(tie).rubbers().stream()
                    .filter(score -> score.how() == How.PLAYED)
                    .forEach(score -> games.addAll(games(event, tie, score, date)));
        }
        return PastNotes.file(games);
    }

    private static List<PastGame> games(Event event, Tie tie, RubberScore score, LocalDate date) {
        Optional<Tie.OpenedRubber> opened = Optional.ofNullable(tie.opened().get(score.rubber()));
        Optional<Pair> home = opened.flatMap(Tie.OpenedRubber::home);
        Optional<Pair> away = opened.flatMap(Tie.OpenedRubber::away);
        if (home.isEmpty() || away.isEmpty()) {
            return List.of();
        }
        Format format = score.rubber().isDecider()
                ? event.conditions().deciderScoring()
                : event.conditions().scoring();
        Optional<OfRubber> rubber = rubber(event, tie, score);
        return score.games().stream()
                .map(game -> new PastGame(
                        date,
                        home.get().first().code(),
                        home.get().second().code(),
                        away.get().first().code(),
                        away.get().second().code(),
                        game,
                        format,
                        rubber))
                .toList();
    }

    /** Games of one rubber are told apart from single games. */
    private static Optional<OfRubber> rubber(Event event, Tie tie, RubberScore score) {
        int bestOf = score.rubber().isDecider() ? 1 : event.conditions().bestOf();
        return bestOf == 1
                ? Optional.empty()
                : Optional.of(new OfRubber(tie.id() + "/" + score.rubber(), OptionalInt.of(bestOf)));
    }

    /**
     * The files of an event folder that name nobody: the event itself with its hours, conditions, courts. Its date is the old one: change
     * it before the folder is brought in.
     */
    public static Map<String, String> template(Event event) {
        Map<String, String> all = FolderExport.files(event, Directory.EMPTY, OwnNotes.NONE, List.of());
        Map<String, String> files = new LinkedHashMap<>();
        OF_A_TEMPLATE.forEach(file ->
                Optional.ofNullable(all.get(file.fileName())).ifPresent(text -> files.put(file.fileName(), text)));
        return files;
    }
}
