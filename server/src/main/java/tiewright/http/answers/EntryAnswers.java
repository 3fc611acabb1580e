package tiewright.http.answers;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.conditions.Plays;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.VisibleEvent;
import tiewright.ledger.Ledger;
import tiewright.setup.EntryWarning;
import tiewright.setup.EntryWarnings;
import tiewright.wording.Words;

/** What the organiser asks who keeps the entries. Cannot be made for anybody else. */
public final class EntryAnswers {
    private final Event event;
    private final VisibleEvent visible;
    private final Ledger ledger;

    /** @throws IllegalStateException for anybody but the organiser */
    public EntryAnswers(Asker asker) {
        this.visible = asker.event();
        if (visible.viewer().role() != Role.ORGANISER) {
            throw new IllegalStateException("only the organiser may ask this");
        }
        this.event = asker.whole();
        this.ledger = asker.ledger();
    }

    /** What looks wrong about the entries, with both entries in each sentence. */
    public List<String> entryWarnings() {
        Words words = Words.of(visible);
        return EntryWarnings.of(event, ledger.directory()).stream()
                .map(warning -> words.sentence(warning.kind().code(), warning.data()))
                .toList();
    }

    /** Pairs of players whose names are alike, one person perhaps, until somebody says that they are two. */
    public List<EntryWarning> alike() {
        return EntryWarnings.of(event, ledger.directory()).stream()
                .filter(warning -> warning.kind().isAboutOnePerson())
                .toList();
    }

    /** The birth year of a player. */
    public OptionalInt bornYear(PlayerId player) {
        return ledger.directory().person(player).map(Directory.Person::bornYear).orElse(OptionalInt.empty());
    }

    /** What a player states to play in beside open rubbers. */
    public Optional<Plays> plays(PlayerId player) {
        return ledger.directory().plays(player);
    }

    /** Whether it matters what players play in, or somebody stated it all the same. */
    public boolean asksPlays() {
        return !event.conditions().tieRubbers().kinds().areOpen()
                || !ledger.directory().stated().isEmpty();
    }

    /**
     * The next number for a player's code; one that was ever used is not used again.
     *
     * @param stem what stands before the number in each code
     */
    public int nextPlayerNumber(String stem) {
        return Stream.concat(event.players().keySet().stream(), ledger.directory().people().keySet().stream())
                        .map(PlayerId::code)
                        .filter(code -> code.startsWith(stem)
                                && code.substring(stem.length()).matches("[0-9]{1,6}"))
                        .mapToInt(code -> Integer.parseInt(code.substring(stem.length())))
                        .max()
                        .orElse(0)
                + 1;
    }
}
