package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.OrderOfPlay;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.http.visit.Changes;
import tiewright.wording.Words;

/**
 * A day that breaks, through the pages: six clubs, three rounds of four rubbers, six courts of which two go under water at
 * 14:30, closing at 17:00. The figures are worked by hand: 9 ties one after the other in slots of 20, 14 and 15 minutes end at
 * 17:30, 16:36 and 16:45; two rounds at 16:30.
 */
class BrokenDayTest {
    private static final String PLAN = "/organiser/plan";
    private static final String BREAKS = "/organiser/day-breaks";
    private final Days day = day();
    private final Served served = Served.of(day, Days.moment("13:00"));

    private static Days day() {
        Days day = Days.empty()
                .fact(new SetUpFact.EventDescribed(
                        "Long Ditch Open",
                        Days.DATE,
                        "Mill Field",
                        Days.ZONE,
                        LocalTime.of(9, 0),
                        Optional.of(LocalTime.of(17, 0))))
                .conditions(tiewright.conditions.Conditions.of(tiewright.conditions.Preset.CLUB_DAY)
                        .with(Setting.FREEZE_MINUTES, "0"))
                .clubs("A", "B", "C", "D", "E", "F")
                .courts("1", "2", "3", "4", "5", "6");
        String[][] rounds = {{"A-F", "B-E", "C-D"}, {"F-D", "E-C", "A-B"}, {"B-F", "C-A", "D-E"}};
        for (int round = 0; round < rounds.length; round++) {
            for (String tie : rounds[round]) {
                day.poolTie("T" + tie.replace("-", ""), "P", round + 1, tie.substring(0, 1), tie.substring(2));
            }
        }
        return day;
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest published() {
        Guest organiser = served.as(Role.ORGANISER);
        Guest.Got made = organiser.send(
                PLAN, PLAN + "/make", Map.of("from", "13:40", "seed", "7", "slot", "20", "seconds", "3"));
        assertThat(made.status()).as(made.text()).isEqualTo(200);
        served.service.awaitPlans();
        Guest.Got got = organiser.send(PLAN, PLAN + "/publish", Map.of("reason", "The afternoon", "by", "Ines Roth"));
        assertThat(got.path()).as(got.text()).isEqualTo("/plan");
        return organiser;
    }

    private Guest.Got broken(Guest organiser) {
        served.at(Days.moment("14:30"));
        Guest.Got asked = organiser.send(
                BREAKS + "?what=court", BREAKS + "/look", Map.of("lost", "5", "from", "14:30", "slot", ""));
        assertThat(asked.status()).as(asked.text()).isEqualTo(200);
        served.service.awaitPlans();
        return organiser.get(BREAKS);
    }

    @Test
    void the_day_is_planned_published_broken_and_mended_with_one_notice_and_every_old_time_kept() {
        Guest organiser = published();
        assertThat(served.ledger.event().notices()).hasSize(1);
        assertThat(served.stranger().get("/plan").text())
                .contains("Version 1 of the order of play, notice 1", "A v F", "Court 6");
        organiser.send("/organiser/courts", "/organiser/courts/change", Map.of("court-6-out", "yes"));

        Guest.Got ways = broken(organiser);
        assertThat(ways.text()).contains("Step 3 of 4. Nothing has happened yet.", "Court 5 can no longer be used");
        assertThat(way(organiser, ways, "Everything as planned").text())
                .contains(
                        "impossible: would end at 17:30",
                        "36 rubbers on 4 courts in slots of 20 minutes",
                        "No plan of this kind can end before 17:30")
                .doesNotContain("Publish this");
        assertThat(way(organiser, ways, "Shorter games").text())
                .contains(
                        "ends at 16:36",
                        "luck counts for more",
                        "Publish this: shorter games",
                        "Step 4 of 4. Nothing has happened yet.");
        assertThat(way(organiser, ways, "Every rally a point").text()).contains("ends at 16:45");
        assertThat(way(organiser, ways, "Fewer rounds").text()).contains("ends at 16:30", "opponents");

        Map<String, String> press = organiser.filled(
                address(ways, "Shorter games"),
                BREAKS + "/publish",
                Map.of("reason", "Two courts under water", "by", "Ines Roth"));
        Guest.Got done = organiser.post(BREAKS + "/publish", press);
        assertThat(done.path()).as(done.text()).isEqualTo("/plan");
        assertThat(done.text()).contains("Version 2 of the order of play, notice 2");
        assertThat(organiser.post(BREAKS + "/publish", press).path())
                .as("sent twice it counts once")
                .isEqualTo("/plan");

        assertThat(served.ledger.event().notices()).hasSize(2);
        assertThat(served.ledger.event().conditions().value(Setting.SCORING)).isEqualTo("side-out-7");
        assertThat(served.ledger.event().courts().get("5").usable()).isFalse();
        seen_by_all(served.ledger.event().order());
    }

    private void seen_by_all(OrderOfPlay order) {
        assertThat(order.under(2)).isNotEmpty();
        OrderOfPlay.Change change = order.under(2).get(order.under(2).size() - 1);
        String old = Changes.times(Words.ofCodes(ZoneOffset.UTC), change.before(), "");
        String now = Changes.times(Words.ofCodes(ZoneOffset.UTC), change.after(), "");
        String struck = "<s class=\"old\"><span class=\"hidden-words\">No longer: </span>" + old + "</s>";
        String club = change.clubs().get(0).code();
        for (String page :
                List.of("/notices", "/tie/" + change.tie(), "/club/" + club, "/player/" + club + "1", "/ties")) {
            Guest.Got got = served.stranger().get(page);
            assertThat(got.body()).as(page).contains(struck);
            assertThat(got.text()).as(page).contains("Two courts under water").contains("order of play 2");
        }
        assertThat(served.stranger().get("/notices").text()).contains(now, "by Ines Roth");
        Guest desk = served.as(Role.DESK);
        assertThat(desk.get("/notices").text()).contains("Notice 2: tell 6 clubs");
        assertThat(desk.get("/desk/notice/2").text()).contains("0 of 6 clubs told", "Player " + club + "1");
    }

    @Test
    void a_card_that_comes_in_between_does_not_keep_a_plan_from_being_published_and_those_told_are_those_counted() {
        Guest organiser = published();
        assertThat(organiser.get(PLAN).text())
                .contains("Published as version 1", "Published, version 1; ends at")
                .doesNotContain("Draft, not published", "Publish this plan");
        served.at(Days.moment("13:50"));
        String first = served.ledger.event().order().changes().get(0).tie().code();
        Guest.Got asked =
                organiser.send(BREAKS + "?what=injury", BREAKS + "/look", Map.of("from", "14:30", "slot", "20"));
        assertThat(asked.status()).as(asked.text()).isEqualTo(200);
        served.service.awaitPlans();
        Guest.Got ways = organiser.get(BREAKS);
        Matcher counted = Pattern.compile("To be told: (\\d+) people of ([^.]*)")
                .matcher(way(organiser, ways, "Fewer rounds").text());
        assertThat(counted.find()).as(ways.text()).isTrue();
        served.given(
                List.of(new tiewright.event.PlayFact.CardEntered(
                        TieId.of(first), tiewright.event.RubberNo.of(1), Days.games("11-5"), How.PLAYED)),
                List.of());
        served.at(Days.moment("13:56"));
        Guest.Got done = organiser.post(
                BREAKS + "/publish",
                organiser.filled(
                        address(ways, "Fewer rounds"), BREAKS + "/publish", Map.of("reason", "held up", "by", "Ines")));
        assertThat(done.path()).as(done.text()).isEqualTo("/plan");
        assertThat(served.ledger.event().order().concerned(2))
                .extracting(club -> "Club " + club.code())
                .containsExactly(counted.group(2).split(", "));
    }

    /** The picture beside the table of the same plan: a bar for each new place, and one for each published place that it leaves. */
    @Test
    void old_and_new_places_on_the_picture_are_those_of_the_table() {
        Guest organiser = published();
        organiser.send(BREAKS + "?what=injury", BREAKS + "/look", Map.of("from", "13:40", "slot", "20"));
        served.service.awaitPlans();
        assertThat(drawnAsTabled(way(organiser, organiser.get(BREAKS), "Everything as planned")))
                .isZero();

        organiser.send("/organiser/courts", "/organiser/courts/change", Map.of("court-6-out", "yes"));
        Guest.Got ways = broken(organiser);
        assertThat(drawnAsTabled(way(organiser, ways, "Shorter games"))).isPositive();
        assertThat(drawnAsTabled(way(organiser, ways, "Fewer rounds"))).isPositive();
    }

    /** Holds the picture of a way against its table; how many ties leave their published place. */
    private long drawnAsTabled(Guest.Got way) {
        Document page = Jsoup.parse(way.body());
        Map<String, Element> planned = page.select("#draft-ties tbody tr:not(.reason)").stream()
                .collect(Collectors.toMap(row -> row.child(1).text().replaceAll("^\\w+: ", ""), row -> row));
        Map<String, SortedSet<String>> bars = bars(page);
        assertThat(planned).isNotEmpty();
        long moved = 0;
        for (Tie tie : served.ledger.event().ties().values()) {
            String title =
                    "Club " + tie.clubs().get(0) + " v Club " + tie.clubs().get(1);
            SortedSet<String> tabled = asTheTableHasIt(tie, Optional.ofNullable(planned.get(title)));
            assertThat(bars.getOrDefault(title, new TreeSet<>())).as(title).isEqualTo(tabled);
            moved += tabled.stream().anyMatch(bar -> bar.startsWith("published")) ? 1 : 0;
        }
        return moved;
    }

    /** What a tie's lines say, from the words that stand for the picture: old or new, court, time. */
    private static Map<String, SortedSet<String>> bars(Document page) {
        Map<String, SortedSet<String>> bars = new TreeMap<>();
        Pattern said = Pattern.compile("Court (\\S+): (.*), (published|planned) at (\\d\\d:\\d\\d)");
        page.select(".day-picture .hidden-words li").forEach(line -> {
            Matcher bar = said.matcher(line.text());
            assertThat(bar.matches()).as(line.text()).isTrue();
            bars.computeIfAbsent(bar.group(2), tie -> new TreeSet<>())
                    .add(bar.group(3) + " " + bar.group(1)
                            + (bar.group(3).equals("published") ? " " + bar.group(4) : ""));
        });
        return bars;
    }

    private SortedSet<String> asTheTableHasIt(Tie tie, Optional<Element> planned) {
        List<String> before = served.ledger.event().order().courts(tie);
        String start = tie.start().orElseThrow().toString();
        List<String> after = planned.map(
                        row -> List.of(row.child(2).text().replaceAll(";.*", "").split(", ")))
                .orElse(List.of());
        String from = planned.map(row -> row.child(0).text()).orElse("");
        SortedSet<String> bars = new TreeSet<>();
        after.forEach(court -> bars.add("planned " + court));
        if (!from.equals(start) || !new TreeSet<>(after).equals(new TreeSet<>(before))) {
            before.forEach(court -> bars.add("published " + court + " " + start));
        }
        return bars;
    }

    @Test
    void rain_counts_a_warm_up_in_and_what_is_wrong_is_said_beside_its_field() {
        Guest organiser = published();
        served.at(Days.moment("15:00"));
        Guest.Got faulty = organiser.send(
                BREAKS + "?what=stop",
                BREAKS + "/look",
                Map.of("stopped", "15:30", "from", "15:05", "rally-seconds", "22"));
        assertThat(faulty.status()).isEqualTo(422);
        assertThat(faulty.text()).contains("Play cannot go on at 15:05 when it stopped at 15:30");
        assertThat(faulty.body()).contains("value=\"15:30\"", "value=\"15:05\"");
        for (Map<String, String> typed : List.of(
                Map.of("what", "court"),
                Map.of("what", "late", "club", "A"),
                Map.of("what", "closing", "closes", "14:00"),
                Map.of("what", ""))) {
            assertThat(organiser
                            .send(BREAKS + "?what=stop", BREAKS + "/look", typed)
                            .status())
                    .as(typed.toString())
                    .isEqualTo(422);
        }
        Guest.Got got =
                organiser.send(BREAKS + "?what=stop", BREAKS + "/look", Map.of("stopped", "14:40", "from", "15:05"));
        served.service.awaitPlans();
        got = organiser.get(BREAKS);
        assertThat(got.text())
                .contains("The stop was 25 minutes: a warm-up of 5 minutes is counted in.", "Play goes on from 15:10");
    }

    @Test
    void a_day_on_time_needs_nothing_published_and_the_form_keeps_the_length_of_a_slot() {
        Guest organiser = published();
        served.at(Days.moment("13:20"));
        assertThat(organiser.get(BREAKS + "?what=stop").body())
                .as("the published plan's slot stands there")
                .containsPattern("name=\"slot\"[^>]*value=\"20\"|value=\"20\"[^>]*name=\"slot\"");
        organiser.send(BREAKS + "?what=injury", BREAKS + "/look", Map.of("from", "13:21", "rally-seconds", "9"));
        // the pace is another one now, and yet nobody has to go elsewhere or at another time
        served.service.awaitPlans();
        Guest.Got ways = organiser.get(BREAKS);
        assertThat(ways.text()).contains("Price: 0 rubbers lost or put off, no tie moved, nobody to tell.");
        assertThat(way(organiser, ways, "Everything as planned").text())
                .contains("Nothing that was published changes, so there is nothing to publish.", "To be told: nobody.")
                .doesNotContain("Publish this");
        assertThat(organiser.get(BREAKS + "?what=stop").body())
                .as("the pace of the last break stands on the form of another")
                .containsPattern("name=\"rally-seconds\"[^>]*value=\"9\"|value=\"9\"[^>]*name=\"rally-seconds\"");
    }

    @Test
    void only_the_organiser_and_the_referee_plan_and_publish_and_everybody_reads_the_chart() {
        for (Guest other : List.of(
                served.stranger(),
                served.captain("A"),
                served.player("A", "A1"),
                served.as(Role.VOLUNTEER),
                served.as(Role.DESK))) {
            for (String page : List.of(PLAN, BREAKS, "/organiser/budget")) {
                assertThat(other.get(page).status()).isEqualTo(403);
            }
            for (String form : List.of("/make", "/stop", "/pin", "/unpin", "/publish")) {
                assertThat(other.post(PLAN + form, Map.of("reason", "x", "by", "y"))
                                .status())
                        .isEqualTo(403);
            }
            for (String form : List.of("/look", "/stop", "/publish")) {
                assertThat(other.post(BREAKS + form, Map.of("what", "injury")).status())
                        .isEqualTo(403);
            }
            for (String page : List.of("/plan", "/plan/clubs", "/board")) {
                assertThat(other.get(page).status()).isEqualTo(200);
            }
        }
        assertThat(served.as(Role.REFEREE).get(PLAN).status()).isEqualTo(200);
        assertThat(served.ledger.event().order().plans()).isEmpty();
    }

    @Test
    void an_option_that_cannot_be_played_or_is_not_the_newest_is_not_published() {
        Guest organiser = published();
        organiser.send("/organiser/courts", "/organiser/courts/change", Map.of("court-6-out", "yes"));
        Guest.Got ways = broken(organiser);
        int notices = served.ledger.event().notices().size();
        for (Map<String, String> typed : List.of(
                Map.of("reason", "r", "by", "b", "option", "0"),
                Map.of("reason", "r", "by", "b", "option", "99"),
                Map.of("reason", "r", "by", "b", "option", "x"),
                Map.of("reason", "r", "by", "b", "option", "1", "search", "999"),
                Map.of(
                        "reason",
                        "",
                        "by",
                        "",
                        "option",
                        address(ways, "Shorter games").replaceAll("\\D", "")))) {
            assertThat(organiser
                            .send(address(ways, "Shorter games"), BREAKS + "/publish", typed)
                            .status())
                    .as(typed.toString())
                    .isEqualTo(422);
        }
        assertThat(served.ledger.event().notices()).hasSize(notices);
        assertThat(served.ledger.event().notices().stream()
                        .map(one -> one.notice())
                        .map(one -> one.reason().words()))
                .doesNotContain("r");
        assertThat(served.ledger.event().tie(TieId.of("TAF"))).isPresent();
    }

    private static Guest.Got way(Guest organiser, Guest.Got ways, String title) {
        return organiser.get(address(ways, title));
    }

    /** Where the line with these words leads. */
    private static String address(Guest.Got ways, String title) {
        int at = ways.body().indexOf("<b>" + title);
        assertThat(at).as(title + " in " + ways.text()).isNotNegative();
        int href = ways.body().lastIndexOf("href=\"", at) + 6;
        return ways.body().substring(href, ways.body().indexOf('"', href));
    }
}
