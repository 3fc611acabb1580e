package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SameName;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.PastedList;
import tiewright.plainfiles.PastedList.Holds;
import tiewright.setup.EnterClub;
import tiewright.setup.EnterPlayer;

/** The clubs and players of a pasted list beside what is entered already. Whatever cannot be read is noted in the form. */
final class PastedSquads {
    /** A number before a name, as lists have them: "3. Ines". */
    private static final String NUMBERED = "^[0-9]{1,3}[.)]\\s*";

    private static final int SHORT_CODE = 3;

    /** A club that the list names. */
    record OfClub(ClubId id, String name, boolean isNew) {
        String at() {
            return "new-" + AtFields.safe(name);
        }
    }

    /** A person on a line, as it stands there. */
    record Person(long line, OfClub club, String name, String rank, String born, String plays, boolean isThere) {
        String at() {
            return "line-" + line;
        }
    }

    private final Visit visit;
    private final Form form;
    private final List<Holds> columns;
    private final Map<SameName, OfClub> clubs = new LinkedHashMap<>();
    private final List<OfClub> named = new ArrayList<>();
    private final List<Person> people = new ArrayList<>();

    PastedSquads(Visit visit, Form form, PastedList list, List<Holds> columns) {
        this.visit = visit;
        this.form = form;
        this.columns = columns;
        list.rows().forEach(this::row);
    }

    List<OfClub> clubs() {
        return List.copyOf(named);
    }

    List<Person> people() {
        return List.copyOf(people);
    }

    List<Person> added() {
        return people.stream().filter(person -> !person.isThere()).toList();
    }

    List<OfClub> newClubs() {
        return named.stream().filter(OfClub::isNew).toList();
    }

    /** One decision for each new club and each new player, the clubs first. */
    List<Decision> decisions() {
        List<Decision> all = new ArrayList<>();
        newClubs()
                .forEach(club -> all.add(new AtFields(
                        club.at(), new EnterClub(club.id(), club.name(), Optional.empty(), OptionalInt.empty()))));
        Map<ClubId, Integer> numbers = new LinkedHashMap<>();
        for (Person person : added()) {
            ClubId club = person.club().id();
            String stem = SquadForm.stem(club);
            int number = numbers.computeIfAbsent(
                    club, any -> visit.ask(EntryAnswers::new).nextPlayerNumber(stem));
            numbers.put(club, number + 1);
            all.add(new AtFields(person.at(), entered(person, PlayerId.of(stem + number))));
        }
        return all;
    }

    private EnterPlayer entered(Person person, PlayerId id) {
        return new EnterPlayer(
                id,
                person.club().id(),
                new Directory.Person(
                        person.name(),
                        number(person, "bornYear", person.born()),
                        PlaysField.read(form, AtFields.id(person.at(), PlaysField.NAME), person.plays())),
                number(person, "rank", person.rank()),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private OptionalInt number(Person person, String field, String typed) {
        String digits = typed.replaceAll("[.)]$", "");
        if (digits.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!digits.matches("[0-9]{1,4}")) {
            form.fault(Refusal.of("form.not-a-number").with("typed", typed).at(AtFields.id(person.at(), field)));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(digits));
    }

    private void row(PastedList.Row row) {
        String whole = cell(row, Holds.NAME) + " " + cell(row, Holds.FIRST_NAME) + " " + cell(row, Holds.FAMILY_NAME);
        String name = whole.strip().replaceFirst(NUMBERED, "");
        String clubName = columns.contains(Holds.CLUB) ? cell(row, Holds.CLUB) : ofAll();
        if (name.isEmpty()) {
            form.fault(Refusal.of("form.line-without-name")
                    .with("line", row.line())
                    .at(PastePage.LIST));
        } else if (clubName.isEmpty()) {
            form.fault(Refusal.of("form.line-without-club")
                    .with("line", row.line())
                    .at(PastePage.LIST));
        } else {
            OfClub club = club(clubName);
            people.add(new Person(
                    row.line(),
                    club,
                    name,
                    cell(row, Holds.RANK),
                    cell(row, Holds.BORN),
                    cell(row, Holds.PLAYS),
                    isThere(club, name)));
        }
    }

    private String cell(PastedList.Row row, Holds holds) {
        int column = columns.indexOf(holds);
        return column < 0 ? "" : row.cell(column);
    }

    /** The club of the whole list: one that is entered, or the name of a new one. */
    private String ofAll() {
        return form.maybe(PastePage.NEW_CLUB).orElse(form.text(PastePage.OF_CLUB));
    }

    private boolean isThere(OfClub club, String name) {
        SameName same = SameName.of(name);
        VisibleEvent event = visit.event();
        return event.squad(club.id()).stream()
                        .anyMatch(player -> SameName.of(event.name(player.id())).is(same))
                || people.stream()
                        .anyMatch(other -> other.club().equals(club)
                                && SameName.of(other.name()).is(same));
    }

    private OfClub club(String name) {
        Optional<OfClub> before = clubs.entrySet().stream()
                .filter(one -> one.getKey().is(SameName.of(name)))
                .map(Map.Entry::getValue)
                .findFirst();
        return before.orElseGet(() -> {
            OfClub club = visit.event().clubs().stream()
                    .filter(one -> one.id().code().equalsIgnoreCase(name)
                            || SameName.of(one.name()).is(SameName.of(name)))
                    .findFirst()
                    .map((Club one) -> new OfClub(one.id(), one.name(), false))
                    .orElseGet(() -> new OfClub(code(name), name, true));
            clubs.put(SameName.of(name), club);
            if (!named.contains(club)) {
                named.add(club);
            }
            return club;
        });
    }

    /** What was typed as its short code, else its first letters, with a number where these are taken. */
    private ClubId code(String name) {
        String field = AtFields.id("new-" + AtFields.safe(name), "club");
        return form.read(field, "form.not-a-code", EntriesPage::shortCode).orElseGet(() -> {
            String letters = name.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
            String stem = letters.isEmpty()
                    ? "C"
                    : letters.substring(
                            0,
                            letters.offsetByCodePoints(
                                    0, Math.min(SHORT_CODE, letters.codePointCount(0, letters.length()))));
            String code = stem;
            for (int number = 2; isTaken(code); number++) {
                code = stem + number;
            }
            return ClubId.of(code);
        });
    }

    private boolean isTaken(String code) {
        return visit.event().clubs().stream().anyMatch(club -> club.id().code().equalsIgnoreCase(code))
                || named.stream().anyMatch(club -> club.id().code().equalsIgnoreCase(code));
    }
}
