package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.organiser.PastedSquads.OfClub;
import tiewright.http.organiser.PastedSquads.Person;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.PasteView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.PastedList;
import tiewright.plainfiles.PastedList.Holds;
import tiewright.wording.Words;

/** Shows a pasted list: the box that it is pasted into, and what it gives. */
final class PasteScreen {
    private static final int SAMPLES = 3;

    private final Visit visit;
    private final Words words;
    private final Form form;
    private final Tried tried;

    PasteScreen(Visit visit, Form form, Tried tried) {
        this.visit = visit;
        this.words = visit.words();
        this.form = form;
        this.tried = tried;
    }

    Screen screen() {
        return screen(Optional.empty(), ofAll());
    }

    Screen screen(PastedList list, PastedSquads squads) {
        return screen(
                list.rows().isEmpty() ? Optional.empty() : Optional.of(shown(list, squads)),
                PastePage.columns(form, list).contains(Holds.CLUB) ? List.of() : ofAll());
    }

    private Screen screen(Optional<PasteView.Shown> shown, List<FormField> whose) {
        String error = tried.error(PastePage.LIST);
        return Screen.of(
                "paste",
                words.say("page-organiser.paste.title"),
                new PasteView(
                        tried.refusal(),
                        new GivenFile(
                                PastePage.LIST,
                                "",
                                "",
                                form.text(PastePage.LIST),
                                error.isEmpty() ? List.of() : List.of(error)),
                        whose,
                        shown));
    }

    private List<FormField> ofAll() {
        List<Option> clubs = visit.event().clubs().stream()
                .map(club -> Option.of(
                        club.id().code(), club.name(), club.id().code().equals(form.text(PastePage.OF_CLUB))))
                .toList();
        List<FormField> asked = new ArrayList<>();
        if (!clubs.isEmpty()) {
            asked.add(SelectField.of(
                    PastePage.OF_CLUB,
                    words.say("page-organiser.paste.of-club"),
                    words.say("page-organiser.paste.list-says"),
                    clubs));
        }
        asked.add(TextField.of(
                        PastePage.NEW_CLUB,
                        TextField.Kind.LINE,
                        words.say("page-organiser.paste.new-club"),
                        form.text(PastePage.NEW_CLUB))
                .withHint(words.say("page-organiser.paste.new-club-hint"))
                .withMaxLength(100));
        return asked;
    }

    private PasteView.Shown shown(PastedList list, PastedSquads squads) {
        int clubs = squads.newClubs().size();
        int players = squads.added().size();
        int there = squads.people().size() - players;
        return new PasteView.Shown(
                words.say("page-organiser.paste.gives", "clubs", clubs, "players", players, "there", there),
                players + clubs == 0 ? "" : words.say("page-organiser.paste.enter", "clubs", clubs, "players", players),
                PastePage.token(form, list),
                squads.clubs().stream().map(club -> club(squads, club)).toList(),
                columns(list),
                visit.ask(EntryAnswers::new).asksPlays()
                        || PastePage.columns(form, list).contains(Holds.PLAYS),
                squads.people().stream().map(this::line).toList());
    }

    private PasteView.ClubLine club(PastedSquads squads, OfClub club) {
        List<Person> people = squads.people().stream()
                .filter(person -> person.club().equals(club))
                .toList();
        String names = people.stream().map(Person::name).collect(Collectors.joining(", "));
        return new PasteView.ClubLine(
                AtFields.id(club.at(), "name"),
                club.name(),
                words.say("page-organiser.paste.people", "count", people.size(), "names", names),
                club.isNew() ? Optional.of(code(club)) : Optional.empty());
    }

    private FormField code(OfClub club) {
        String field = AtFields.id(club.at(), "club");
        return TextField.of(
                        field,
                        TextField.Kind.LINE,
                        words.say("page-organiser.paste.code", "club", club.name()),
                        tried.error(field).isEmpty() ? club.id().code() : form.text(field))
                .withMaxLength(12)
                .withError(tried.error(field));
    }

    private List<FormField> columns(PastedList list) {
        List<Holds> chosen = PastePage.columns(form, list);
        return IntStream.range(0, chosen.size())
                .mapToObj(column -> column(list, column, chosen.get(column)))
                .toList();
    }

    private FormField column(PastedList list, int column, Holds chosen) {
        String samples = list.rows().stream()
                .map(row -> row.cell(column))
                .filter(cell -> !cell.isEmpty())
                .distinct()
                .limit(SAMPLES)
                .collect(Collectors.joining(", "));
        List<Option> options = new ArrayList<>();
        for (Holds holds : Holds.values()) {
            options.add(
                    Option.of(holds.code(), words.say("page-organiser.paste.holds." + holds.code()), holds == chosen));
        }
        return SelectField.of(
                PastePage.COLUMN + column,
                words.say("page-organiser.paste.column", "number", column + 1, "samples", samples),
                "",
                options);
    }

    private PasteView.Line line(Person person) {
        String wrong = Stream.of("name", "rank", "bornYear", PlaysField.NAME, "player")
                .map(field -> tried.error(AtFields.id(person.at(), field)))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
        return new PasteView.Line(
                person.at(),
                List.of(person.name(), person.club().name(), person.rank(), person.born(), person.plays()),
                words.say(person.isThere() ? "page-organiser.paste.is-there" : "page-organiser.paste.is-new"),
                wrong);
    }
}
