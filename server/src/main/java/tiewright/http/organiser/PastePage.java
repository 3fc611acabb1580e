package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.event.Together;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tokens;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Uploads;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.GivenBytes;
import tiewright.plainfiles.PastedList;
import tiewright.plainfiles.PastedList.Holds;

/** Squads by a pasted list or a file: what it gives is shown first, and kept by a second press. */
final class PastePage implements Page {
    static final String HERE = EntriesPage.HERE + "/paste";
    static final String LIST = "list";
    static final String OF_CLUB = "of-club";
    static final String NEW_CLUB = "new-club";
    static final String COLUMN = "column-";
    static final String SHOWN = "shown";
    static final String KEEP = "keep";

    private static final String CHOSEN = "list-file";
    private static final String PRESS = "press";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(empty(visit)));
        routes.postInParts(Door.ORGANISER, HERE, PastePage::given);
    }

    private static Screen empty(Visit visit) {
        String club = Optional.ofNullable(visit.ctx().queryParam("club")).orElse("");
        return new PasteScreen(visit, Form.of(Map.of(OF_CLUB, club)), Tried.NOTHING).screen();
    }

    private static void given(Visit visit) {
        Form form = read(visit);
        if (!form.has(LIST)) {
            form.mustText(LIST);
            visit.refuse(form, tried -> new PasteScreen(visit, form, tried).screen());
            return;
        }
        PastedList list = list(visit, form);
        PastedSquads squads = new PastedSquads(visit, form, list, columns(form, list));
        list.broken()
                .ifPresent(line -> form.fault(
                        Refusal.of("form.list-broken").with("line", line).at(LIST)));
        answer(visit, form, list, squads);
    }

    private static void answer(Visit visit, Form form, PastedList list, PastedSquads squads) {
        List<Decision> decisions = squads.decisions();
        boolean keeps = form.text(PRESS).equals(KEEP) && form.text(SHOWN).equals(token(form, list));
        Function<Tried, Screen> again = tried -> new PasteScreen(visit, form, tried).screen(list, squads);
        if (keeps && form.isClean() && !decisions.isEmpty()) {
            visit.attempt(form, () -> new Together(decisions), EntriesPage.HERE, again);
            return;
        }
        if (!decisions.isEmpty()) {
            visit.wouldRefuse(new Together(decisions)).forEach(form::fault);
        }
        if (form.isClean()) {
            visit.show(again.apply(Tried.again(form)));
        } else {
            visit.refuse(form, again);
        }
    }

    /** A chosen file counts instead of what was pasted, and stands in its place from then on. */
    private static Form read(Visit visit) {
        Form form = visit.form();
        Optional<byte[]> chosen = Uploads.bytes(visit.ctx(), CHOSEN);
        if (chosen.isEmpty()) {
            return form;
        }
        Optional<String> text = GivenBytes.text(chosen.get());
        if (text.isEmpty()) {
            form.fault(Refusal.of("form.list-not-text").at(LIST));
            return form;
        }
        return form.with(Map.of(LIST, text.get()));
    }

    private static PastedList list(Visit visit, Form form) {
        List<String> clubs = new ArrayList<>();
        visit.event().clubs().forEach(club -> clubs.addAll(List.of(club.id().code(), club.name())));
        return PastedList.read(form.text(LIST), clubs);
    }

    /** As they were chosen for this list, else as they are guessed. */
    static List<Holds> columns(Form form, PastedList list) {
        boolean chosen = !list.columns().isEmpty()
                && form.wasAsked(COLUMN + (list.columns().size() - 1))
                && !form.wasAsked(COLUMN + list.columns().size());
        return chosen
                ? IntStream.range(0, list.columns().size())
                        .mapToObj(column -> holds(form.text(COLUMN + column)))
                        .toList()
                : list.columns();
    }

    private static Holds holds(String code) {
        for (Holds holds : Holds.values()) {
            if (holds.code().equals(code)) {
                return holds;
            }
        }
        return Holds.NOTHING;
    }

    /** Names what a person was shown, so that nothing else is kept by the press below it. */
    static String token(Form form, PastedList list) {
        List<Holds> columns = columns(form, list);
        String whose = columns.contains(Holds.CLUB) ? "" : form.text(OF_CLUB) + "\n" + form.text(NEW_CLUB);
        return Tokens.hash(String.join("\n", form.text(LIST), columns.toString(), whose));
    }
}
