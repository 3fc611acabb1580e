package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.PlayerId;
import tiewright.event.Role;

/**
 * Walks every page and print of the demo that a role is offered, in the pseudo-language. What a person can read there
 * stands in brackets, is a name, a number or a code, or was typed by somebody; anything else is a sentence that no bundle
 * has. Pages that have some left stand in a list, which may only shrink.
 */
class PseudoLanguageTest {
    private static final Path LIST = Path.of("src/test/resources/tiewright/http/pages-with-words-left.txt");

    /** So many pages of one kind for one role: the others say the same of other ties, clubs and players. */
    private static final int OF_A_KIND = 2;

    private static final Pattern NOT_PAGES =
            Pattern.compile("/(static|language|enter|leave|events|qr)\\b.*|.*\\.(csv|ics|zip|svg|txt|js|json)(\\?.*)?");

    /** Codes, addresses, formats of scoring and what is hashed: the same in every language. */
    private static final Pattern CODES = Pattern.compile(
            "https?://\\S+|\\b[0-9a-f]{8,}\\b|\\b(side-out|rally)-[\\w-]+|\\b[A-Z0-9]+(-[A-Z0-9]+)*\\b|\\b\\w+\\.(csv|ics)\\b");

    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    private static final PseudoLanguage LANGUAGE = PseudoLanguage.made();
    private static final Served SERVED = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
    private static final SortedMap<String, SortedSet<String>> LEFT = new TreeMap<>();

    @BeforeAll
    static void walk_all() {
        List<String> names = names();
        Map<String, Guest> guests = new LinkedHashMap<>();
        guests.put("everybody", SERVED.stranger());
        guests.put("player", SERVED.player("KS", firstOf("KS")));
        guests.put("captain", SERVED.captain("KS"));
        guests.put("volunteer", SERVED.as(Role.VOLUNTEER));
        guests.put("desk", SERVED.as(Role.DESK));
        guests.put("referee", SERVED.as(Role.REFEREE));
        guests.put("organiser", SERVED.as(Role.ORGANISER));
        guests.forEach((role, guest) -> walk(guest, names));
    }

    @AfterAll
    static void stop() {
        SERVED.close();
        LANGUAGE.close();
    }

    private static String firstOf(String club) {
        return SERVED.ledger.event().players().values().stream()
                .filter(player -> player.club().code().equals(club))
                .map(player -> player.id().code())
                .findFirst()
                .orElseThrow();
    }

    private static void walk(Guest guest, List<String> names) {
        guest.get("/language/" + PseudoLanguage.TAG);
        Deque<String> ahead = new ArrayDeque<>(List.of("/"));
        Set<String> known = new HashSet<>(ahead);
        Map<String, Integer> seen = new TreeMap<>();
        while (!ahead.isEmpty()) {
            String path = ahead.removeFirst();
            if (seen.merge(kind(path), 1, Integer::sum) > OF_A_KIND) {
                continue;
            }
            Guest.Got got = guest.get(path);
            if (got.status() != 200 || !got.body().stripLeading().startsWith("<!DOCTYPE html>")) {
                continue;
            }
            Document page = Jsoup.parse(got.body());
            assertThat(page.selectFirst("html").attr("lang")).as(path).isEqualTo(PseudoLanguage.TAG);
            LEFT.computeIfAbsent(kind(path), unknown -> new TreeSet<>()).addAll(left(page, names));
            page.select("a[href^=/]").eachAttr("href").stream()
                    .map(href -> href.replaceAll("#.*", ""))
                    .filter(href -> !NOT_PAGES.matcher(href).matches() && known.add(href))
                    .forEach(ahead::add);
        }
    }

    /** The address with a star for every tie, club, player, pool, court and number in it. */
    private static String kind(String path) {
        Event event = SERVED.ledger.event();
        Set<String> codes = Stream.of(
                        event.ties().keySet(),
                        event.clubs().keySet(),
                        event.players().keySet(),
                        event.pools().keySet(),
                        event.courts().keySet())
                .flatMap(Set::stream)
                .map(Object::toString)
                .collect(Collectors.toSet());
        String kind = Stream.of(path.replaceAll("\\?.*", "").split("/"))
                .map(part -> codes.contains(part) || part.matches("\\d+|D") ? "*" : part)
                .collect(Collectors.joining("/"));
        return kind.isEmpty() ? "/" : kind;
    }

    /** Names and what people typed, the longest first so that none is cut by another. */
    private static List<String> names() {
        Event event = SERVED.ledger.event();
        Set<String> names = new HashSet<>();
        event.clubs().values().forEach(club -> {
            names.add(club.name());
            club.town().ifPresent(names::add);
        });
        for (PlayerId player : event.players().keySet()) {
            String full = SERVED.ledger.directory().name(player);
            names.add(full);
            names.addAll(List.of(full.split(" ")));
        }
        event.about()
                .ifPresent(about -> names.addAll(
                        List.of(about.name(), about.venue(), about.zone().getId())));
        names.addAll(event.courts().keySet());
        names.addAll(event.pools().keySet());
        event.lots().values().forEach(lots -> lots.forEach(lot -> names.add(lot.witness())));
        event.order().plans().forEach(plan -> names.addAll(List.of(plan.by(), plan.reason())));
        return names.stream()
                .filter(name -> name.length() > 1)
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
    }

    private static List<String> left(Document page, List<String> names) {
        // the names of time zones are codes
        page.select("script, style, pre, .code, span.columns, kbd, textarea, .languages, select[name=zone]")
                .remove();
        // what is typed as it stands is a part of its sentence
        page.select("p:has(> .whole)").forEach(sentence -> sentence.text(sentence.text()));
        List<String> texts = new ArrayList<>();
        page.getAllElements().forEach(element -> {
            element.textNodes().forEach(text -> texts.add(text.text()));
            element.attributes().forEach(attribute -> read(element, attribute).ifPresent(texts::add));
        });
        return texts.stream()
                .map(PseudoLanguage::unbracketed)
                .map(text -> without(names, text))
                .filter(text -> WORD.matcher(text).find())
                .map(String::strip)
                .filter(text -> !isLabel(text))
                .toList();
    }

    /** What somebody typed as the label of a link, alone or behind its club. */
    private static boolean isLabel(String text) {
        return SERVED.ledger.event().links().values().stream()
                .map(Link::label)
                .anyMatch(label ->
                        text.equals(label) || text.replaceFirst("^[\\s,]*", "").equals("(" + label + ")"));
    }

    /** An attribute that is shown or read aloud. */
    private static Optional<String> read(Element element, Attribute attribute) {
        boolean button = element.is("input[type=submit], input[type=button]")
                && attribute.getKey().equals("value");
        boolean told = Set.of("aria-label", "title", "placeholder", "alt").contains(attribute.getKey());
        boolean spoken =
                attribute.getKey().startsWith("data-") && attribute.getValue().contains(" ");
        return button || told || spoken ? Optional.of(attribute.getValue()) : Optional.empty();
    }

    private static String without(List<String> names, String text) {
        String rest = text;
        for (String name : names) {
            rest = rest.replace(name, " ");
        }
        return CODES.matcher(rest).replaceAll(" ");
    }

    private static SortedSet<String> listed() throws IOException {
        return Files.readAllLines(LIST).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void shows_no_words_that_a_translation_could_not_reach() throws IOException {
        Files.writeString(
                Path.of("target/words-left.txt"),
                LEFT.entrySet().stream()
                        .map(page -> page.getKey() + "\n    " + String.join("\n    ", page.getValue()))
                        .collect(Collectors.joining("\n")));
        SortedMap<String, SortedSet<String>> new_ = new TreeMap<>(LEFT);
        new_.keySet().removeAll(listed());
        new_.values().removeIf(Set::isEmpty);
        assertThat(new_).as("words without brackets; put them into a bundle").isEmpty();
    }

    @Test
    void the_list_of_pages_with_words_left_only_shrinks() throws IOException {
        assertThat(listed())
                .as("take these out of " + LIST + ": they are clean, or nobody is led there")
                .allSatisfy(page -> assertThat(LEFT.getOrDefault(page, new TreeSet<>()))
                        .as(page)
                        .isNotEmpty());
    }

    @Test
    void walks_far() {
        assertThat(LEFT).hasSizeGreaterThan(60);
        assertThat(LEFT.keySet())
                .contains("/tie/*", "/captain/sheet/*", "/organiser/links", "/paper/cards", "/desk/tie/*");
    }
}
