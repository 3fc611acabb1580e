package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.event.VisibleEvent;
import tiewright.http.views.ConditionsView;
import tiewright.http.visit.ConditionGroups;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.OpeningWords;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.TickConditionsRead;
import tiewright.wording.ConditionsWords;
import tiewright.wording.DeletionWords;
import tiewright.wording.Words;

/** The conditions of play as everybody reads and prints them; a captain ticks that they were read. */
final class ConditionsPage implements Page {
    private static final String HERE = "/conditions";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.CAPTAIN, HERE + "/read", ConditionsPage::tick);
    }

    private static void tick(Visit visit) {
        Form form = visit.form();
        OptionalInt version = form.mustNumber("version");
        form.mustText("tick");
        visit.attempt(
                form,
                () -> new TickConditionsRead(visit.club(), version.orElseThrow()),
                HERE,
                tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        return Screen.of(
                "conditions",
                visit.say("page-everybody.conditions-of-play"),
                new ConditionsView(
                        tried.refusal(),
                        standing(event) + " " + DeletionWords.sentence(visit.words(), event.deletion(), event.zone()),
                        event.opening()
                                .map(chosen -> OpeningWords.of(visit.words(), chosen))
                                .orElse(""),
                        ConditionGroups.of(visit.words(), event.conditions()),
                        asked(visit),
                        ticked(visit)));
    }

    private static String standing(VisibleEvent event) {
        String preset = new ConditionsWords(Words.of(event))
                .presetName(event.conditions().base());
        if (event.conditionsVersion() == 0) {
            return Words.say(event, "page-everybody.not-published-yet-until-the", "preset", preset);
        }
        String frozen = event.isFrozen()
                ? Words.say(event, "page-everybody.frozen-since-the-first-sheet")
                : Words.say(event, "page-everybody.frozen-from-the-first-sealed");
        return Words.say(
                event,
                "page-everybody.version-made-from-the-preset",
                "conditionsVersion",
                event.conditionsVersion(),
                "preset",
                preset,
                "frozen",
                frozen);
    }

    private static Optional<ConditionsView.Tick> asked(Visit visit) {
        int version = visit.event().conditionsVersion();
        if (visit.role() != Role.CAPTAIN || version == 0 || visit.event().conditionsRead(visit.club()) >= version) {
            return Optional.empty();
        }
        return Optional.of(
                new ConditionsView.Tick(version, visit.say("page-everybody.i-have-read-version", "version", version)));
    }

    private static List<String> ticked(Visit visit) {
        VisibleEvent event = visit.event();
        List<ClubId> clubs = visit.role() == Role.CAPTAIN
                ? List.of(visit.club())
                : visit.role().isOfficial()
                        ? event.clubs().stream().map(club -> club.id()).toList()
                        : List.of();
        List<String> lines = new ArrayList<>();
        for (ClubId club : clubs) {
            int read = event.conditionsRead(club);
            lines.add(event.clubName(club) + ": "
                    + (read == 0
                            ? visit.say("page-everybody.no-version-ticked-yet")
                            : visit.say("page-everybody.version-read", "read", read)));
        }
        return lines;
    }
}
