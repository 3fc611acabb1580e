package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import tiewright.event.Role;

/** Each role loads the rules of what stands on its pages: no class is drawn by a stylesheet that the page does not ask for. */
class StylesOfRolesTest {
    private static final Path STATIC = Path.of("..", "web", "static");
    private static final Pattern CLASS = Pattern.compile("\\.([a-z][a-z0-9-]*)(?=[^{}]*\\{)");

    /** Words that another rule gives a second look: without it they still have the one of everybody's stylesheet. */
    private static final Set<String> SECOND_LOOK = Set.of("club", "small", "side", "state-missing", "state-plain");

    /** So many pages of one kind for one role. */
    private static final int OF_A_KIND = 3;

    private static final Served SERVED = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));

    @AfterAll
    static void stop() {
        SERVED.close();
    }

    @Test
    void everybody_and_players_need_the_common_stylesheet_alone() throws IOException {
        assertThat(missing(SERVED.stranger())).isEmpty();
        assertThat(missing(SERVED.player("KS", "KS1"))).isEmpty();
    }

    @Test
    void captains_find_theirs() throws IOException {
        assertThat(missing(SERVED.captain("KS"))).isEmpty();
    }

    @Test
    void those_who_run_the_day_find_theirs() throws IOException {
        for (Role role : new Role[] {Role.VOLUNTEER, Role.DESK, Role.REFEREE, Role.ORGANISER}) {
            assertThat(missing(SERVED.as(role))).as(role.code()).isEmpty();
        }
    }

    /** Classes of pages that some stylesheet knows and the page's own do not, each with a page. */
    private static Map<String, String> missing(Guest guest) throws IOException {
        Set<String> all = new HashSet<>();
        for (String sheet : new String[] {"tiewright", "captain", "desk", "cards"}) {
            all.addAll(classes(sheet));
        }
        all.removeAll(SECOND_LOOK);
        Map<String, String> missing = new TreeMap<>();
        Deque<String> ahead = new ArrayDeque<>(Set.of("/"));
        Set<String> known = new HashSet<>(ahead);
        Map<String, Integer> seen = new TreeMap<>();
        while (!ahead.isEmpty()) {
            String path = ahead.removeFirst();
            String kind = path.replaceAll("\\?.*", "").replaceAll("/[A-Z0-9][A-Z0-9-]*(?=/|$)", "/*");
            if (seen.merge(kind, 1, Integer::sum) > OF_A_KIND) {
                continue;
            }
            Guest.Got got = guest.get(path);
            if (got.status() != 200 || !got.body().stripLeading().startsWith("<!DOCTYPE html>")) {
                continue;
            }
            Document page = Jsoup.parse(got.body());
            for (String name : unknown(page, all)) {
                missing.putIfAbsent(name, path);
            }
            page.select("a[href^=/]").eachAttr("href").stream()
                    .map(href -> href.replaceAll("#.*", ""))
                    .filter(href ->
                            !href.matches("/(static|language|enter|leave|events|qr)\\b.*|.*\\.(csv|ics|zip|svg)"))
                    .filter(known::add)
                    .forEach(ahead::add);
        }
        return missing;
    }

    private static Set<String> unknown(Document page, Set<String> all) throws IOException {
        Set<String> here = new HashSet<>();
        for (Element link : page.select("link[rel=stylesheet]")) {
            String sheet = link.attr("href").replaceAll("/static/|\\.css", "");
            if (!sheet.equals("print")) {
                here.addAll(classes(sheet));
            }
        }
        Set<String> names = new TreeSet<>();
        page.getElementsByAttribute("class").forEach(each -> names.addAll(each.classNames()));
        names.retainAll(all);
        names.removeAll(here);
        return names;
    }

    private static Set<String> classes(String sheet) throws IOException {
        String css = Files.readString(STATIC.resolve(sheet + ".css")).replaceAll("(?s)/\\*.*?\\*/", "");
        return CLASS.matcher(css)
                .results()
                .map((MatchResult one) -> one.group(1))
                .collect(Collectors.toSet());
    }
}
