package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tiewright.desk.CheckIn;
import tiewright.desk.PostNotice;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** What an open page hears: that something changed, and only if its reader may notice it. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class LiveUpdatesTest {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), List.of());
    }

    private static SealSheet seal(String club) {
        return new SealSheet(SHEETS, ClubId.of(club), Days.straight(club, 4), "ab".repeat(32));
    }

    private static PostNotice notice(String words) {
        return new PostNotice(
                words,
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                java.util.Optional.empty(),
                "for all to know");
    }

    @Test
    void a_replaced_sheet_makes_no_ripple_on_any_other_screen() throws IOException {
        try (Served served = oneTie();
                Ear stranger = new Ear(served.stranger());
                Ear rival = new Ear(served.captain("S"));
                Ear desk = new Ear(served.as(Role.DESK))) {
            served.ask(Days.captain("N"), seal("N"));
            for (Ear ear : List.of(stranger, rival, desk)) {
                assertThat(ear.next()).isEqualTo("data: changed");
            }
            served.ask(Days.captain("N"), seal("N"));
            served.ask(Days.captain("N"), seal("N"));
            served.ask(Days.organiser(), notice("Lunch is served"));
            for (Ear ear : List.of(stranger, rival, desk)) {
                assertThat(ear.next()).isEqualTo("data: changed");
            }
            served.ask(Days.organiser(), notice("That was all"));
            for (Ear ear : List.of(stranger, rival, desk)) {
                assertThat(ear.next()).isEqualTo("data: changed");
                assertThat(ear.heard)
                        .as("one message for each fact that everybody may notice")
                        .hasSize(3);
            }
        }
    }

    @Test
    void a_check_in_is_heard_by_officials_only() throws IOException {
        try (Served served = oneTie();
                Ear stranger = new Ear(served.stranger());
                Ear organiser = new Ear(served.as(Role.ORGANISER))) {
            served.ask(Days.desk(), new CheckIn(PlayerId.of("N1"), true));
            assertThat(organiser.next()).isEqualTo("data: changed");
            served.ask(Days.organiser(), notice("Begin"));
            assertThat(organiser.next()).isEqualTo("data: changed");
            assertThat(stranger.next()).isEqualTo("data: changed");
            assertThat(stranger.heard).hasSize(1);
            assertThat(organiser.heard).hasSize(2);
        }
    }

    @Test
    void a_revoked_link_hears_nothing_more() throws IOException {
        try (Served served = oneTie();
                Ear captain = new Ear(served.captain("S"))) {
            served.given(List.of(new tiewright.event.SetUpFact.LinkRevoked("T1")), List.of());
            assertThat(captain.isOver()).isTrue();
        }
    }

    @Test
    void the_deadline_is_heard_without_any_fact() throws IOException {
        try (Served served = oneTie();
                Ear stranger = new Ear(served.stranger())) {
            served.at(Days.moment("09:45"));
            assertThat(stranger.next()).isEqualTo("data: changed");
        }
    }

    @Test
    void changes_that_come_fast_are_told_in_rounds_and_none_is_left_out() throws IOException {
        int changes = 40;
        try (Served served = oneTie();
                Ear stranger = new Ear(served.stranger())) {
            for (int i = 1; i <= changes; i++) {
                served.ask(Days.organiser(), notice("Call " + i));
            }
            int heard = 0;
            while (heard < changes) {
                String[] words = stranger.next()
                        .substring("data: changed".length())
                        .strip()
                        .split(" ");
                heard += words[0].isEmpty() ? 1 : Integer.parseInt(words[0]);
            }
            assertThat(heard).isEqualTo(changes);
        }
    }

    /** Listens to {@code /events} as a page does; messages are kept, comments are not. */
    private static final class Ear implements AutoCloseable {
        private final BufferedReader lines;
        private final List<String> heard = new ArrayList<>();

        Ear(Guest guest) throws IOException {
            lines = new BufferedReader(new InputStreamReader(guest.listen("/events"), StandardCharsets.UTF_8));
            String first = lines.readLine();
            assertThat(first).startsWith(":");
        }

        /** The stream ends without another message. */
        boolean isOver() throws IOException {
            String line = lines.readLine();
            while (line != null && !line.startsWith("data:")) {
                line = lines.readLine();
            }
            return line == null;
        }

        String next() throws IOException {
            while (true) {
                String line = lines.readLine();
                if (line == null) {
                    throw new AssertionError("the stream ended after " + heard);
                }
                if (line.startsWith("data:")) {
                    heard.add(line);
                    return line;
                }
            }
        }

        @Override
        public void close() throws IOException {
            lines.close();
        }
    }
}
