package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.OTHER_SECRET;
import static tiewright.sheet.Asked.SECRET;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.seal;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.straight;
import static tiewright.sheet.Asked.why;
import static tiewright.sheet.Asked.without;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Actor;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.TieId;

/** Sheets kept on the phone; asking for the opening; telling the own club; sending a sheet back. */
class PhoneAndAskTest {
    private static Days captainN() {
        return Days.oneTie().by(Days.captain("N"));
    }

    private static String receipt(Sheet sheet) {
        return Receipt.of(SECRET, TieId.of("A1"), N, sheet);
    }

    private static KeepOnPhone keep(Sheet sheet) {
        return new KeepOnPhone(SHEETS, N, receipt(sheet));
    }

    private static HandInSheet handIn(Sheet sheet) {
        return new HandInSheet(SHEETS, N, sheet, SECRET);
    }

    private static Exchange.SideOfExchange home(Days day) {
        return day.event().exchange(SHEETS).side(Side.HOME);
    }

    @Test
    void only_the_receipt_comes_to_the_desk_and_an_older_sheet_goes() {
        Days day = captainN().does(seal("N")).does(keep(straight("N")));
        assertThat(home(day).isIn()).isTrue();
        assertThat(home(day).atDesk()).isFalse();
        assertThat(home(day).sealed()).isEqualTo(2);
        assertThat(day.notes()).endsWith(new PrivateNote.SheetDropped(SHEETS, N));
        assertThat(day.refusals(new OpenSheets(SHEETS))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0123", "0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF0123456789ABCDEF"})
    void refuses_a_receipt_that_is_none(String receipt) {
        assertThat(why(captainN(), new KeepOnPhone(SHEETS, N, receipt))).containsExactly("receipt");
    }

    @Test
    void a_receipt_sent_late_is_as_late_as_a_sheet() {
        assertThat(why(captainN().at("09:51"), keep(straight("N")))).containsExactly("late-grace");
    }

    @Test
    void hands_in_only_the_last_sheet_that_was_kept() {
        Days day = captainN().does(keep(sheet("N", "12 34 78 56"))).does(keep(straight("N")));
        assertThat(why(day, handIn(sheet("N", "12 34 78 56")))).containsExactly("receipt-differs");
        assertThat(why(day, new HandInSheet(SHEETS, N, straight("N"), OTHER_SECRET)))
                .containsExactly("receipt-differs");
        assertThat(why(day, new HandInSheet(SHEETS, N, straight("N"), "x"))).containsExactly("secret");
        day.does(handIn(straight("N")));
        assertThat(home(day).atDesk()).isTrue();
        assertThat(day.notes()).endsWith(new PrivateNote.SheetKept(SHEETS, N, straight("N"), SECRET));
        assertThat(why(day, handIn(straight("N")))).containsExactly("not-on-phone");
    }

    @Test
    void an_illegal_sheet_is_not_handed_in_but_one_whose_player_has_gone_since_is() {
        Sheet twice = sheet("N", "12 34 56 17");
        assertThat(why(captainN().does(keep(twice)), handIn(twice))).containsExactly("player-twice");
        Days gone = without(captainN().does(keep(straight("N"))), "N8").by(Days.captain("N"));
        assertThat(why(gone, handIn(straight("N")))).isEmpty();
    }

    @Test
    void nothing_is_handed_in_after_a_ruling() {
        Days day = captainN().does(keep(straight("N"))).fact(new ExchangeFact.SideRuled(SHEETS, N, true, 1));
        assertThat(why(day, handIn(straight("N")))).containsExactly("ruled");
    }

    @Test
    void asks_for_the_opening_once_a_sheet_is_in_and_only_once() {
        AskOpening ask = new AskOpening(SHEETS, N);
        assertThat(why(captainN(), ask)).containsExactly("not-in");
        Days day = captainN().does(seal("N")).does(ask);
        assertThat(home(day).openingAsked()).isTrue();
        assertThat(why(day, ask)).containsExactly("already-asked");
    }

    @Test
    void asks_for_a_decider_only_when_the_tie_is_level() {
        Days early = Asked.opened().by(Days.captain("N")).does(Asked.sealDecider("N", "1", "2"));
        assertThat(why(early, new AskOpening(DECIDER, N))).containsExactly("not-level");
        Days level = Asked.level().by(Days.captain("N")).does(Asked.sealDecider("N", "1", "2"));
        assertThat(why(level, new AskOpening(DECIDER, N))).isEmpty();
    }

    @Test
    void tells_the_own_club_what_lies_at_the_desk() {
        TellClub tell = new TellClub(SHEETS, N, true);
        assertThat(why(captainN(), tell)).containsExactly("not-in");
        assertThat(why(captainN().does(keep(straight("N"))), tell)).containsExactly("on-phone");
        Days day = captainN().does(seal("N")).does(tell);
        assertThat(home(day).told()).isTrue();
        assertThat(why(day, tell)).containsExactly("already-told");
        assertThat(home(day.does(seal("N"))).told())
                .as("a new sheet is told anew")
                .isFalse();
    }

    @Test
    void these_belong_to_the_own_captain() {
        List<Decision> decisions = List.of(
                keep(straight("N")), handIn(straight("N")), new AskOpening(SHEETS, N), new TellClub(SHEETS, N, true));
        for (Actor by :
                List.of(Days.captain("S"), Days.player("N"), Days.desk(), Days.referee(), Days.volunteer("c"))) {
            decisions.forEach(
                    decision -> assertThat(why(Days.oneTie().by(by), decision)).containsExactly("not-yours"));
        }
    }

    @Test
    void an_official_sends_a_sheet_back_unseen_with_a_reason() {
        ReturnSheet back = new ReturnSheet(SHEETS, N, "The tie was moved");
        Days day = captainN().does(seal("N"));
        assertThat(why(day, back)).containsExactly("officials-only");
        assertThat(why(day.by(Days.desk()), new ReturnSheet(SHEETS, N, " "))).containsExactly("reason");
        assertThat(why(day, new ReturnSheet(SHEETS, Asked.S, "x"))).containsExactly("not-in");
        day.does(back);
        assertThat(home(day).isIn()).isFalse();
        assertThat(day.notes()).endsWith(new PrivateNote.SheetDropped(SHEETS, N));
        assertThat(why(Asked.opened().by(Days.desk()), back)).containsExactly("opened");
    }

    @Test
    void a_sheet_from_a_phone_that_names_a_stranger_is_not_handed_in() {
        Sheet stranger = Sheet.full(Pair.of("N1", "N2"), Pair.of("N3", "N4"), Pair.of("N5", "N6"), Pair.of("N7", "S8"));
        assertThat(why(captainN().does(keep(stranger)), handIn(stranger))).containsExactly("other-squad");
    }
}
