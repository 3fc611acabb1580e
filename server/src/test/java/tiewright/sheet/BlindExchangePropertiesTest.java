package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.SHEETS;

import java.time.Duration;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.Fact;
import tiewright.event.Recorded;
import tiewright.event.Sheet;
import tiewright.event.Side;

/** Random mornings of one exchange: whatever people press, in whatever order, the contract holds. */
class BlindExchangePropertiesTest {
    private static final List<Sheet> N_SHEETS = Sheets.disjoint("N", 8, 4);
    private static final List<Sheet> S_SHEETS = Sheets.disjoint("S", 8, 4);
    private static final int PRESSES = 30;

    private Days day = Days.oneTie();
    private Map<ClubId, Decision.Sealed> last = new HashMap<>();
    private Map<ClubId, Decision.Sealed> onPhone = new HashMap<>();

    @Test
    void both_or_none_and_the_last_sealed_whatever_is_pressed() {
        int opened = 0;
        for (int round = 0; round < 300; round++) {
            Random random = Seed.random(round);
            day = Days.oneTie();
            last = new HashMap<>();
            onPhone = new HashMap<>();
            for (int press = 0; press < PRESSES; press++) {
                press(random);
                check(Seed.rerun(round));
            }
            opened += day.event().exchange(SHEETS).isOpened() ? 1 : 0;
        }
        assertThat(opened).as("enough of the rounds must come to an opening").isBetween(30, 300);
    }

    private void press(Random random) {
        String club = random.nextBoolean() ? "N" : "S";
        ClubId id = ClubId.of(club);
        day.at(Days.moment("09:30")
                .plus(Duration.ofSeconds(random.nextInt(1800)))
                .atZone(Days.ZONE)
                .toLocalTime()
                .toString());
        switch (random.nextInt(9)) {
            case 0, 1, 2 -> seal(club, random);
            case 3 -> keep(club, random);
            case 4 ->
                Optional.ofNullable(onPhone.get(id))
                        .ifPresent(kept ->
                                tries(Days.captain(club), new HandInSheet(SHEETS, id, kept.sheet(), kept.secret())));
            case 5 -> tries(Days.captain(club), new AskOpening(SHEETS, id));
            case 6 -> tries(Exchanges.AUTOMATIC, new OpenSheets(SHEETS));
            case 7 -> tries(Days.desk(), new OpenSheets(SHEETS));
            default -> {
                if (tries(Days.desk(), new ReturnSheet(SHEETS, id, "asked for"))) {
                    last.remove(id);
                }
            }
        }
    }

    private void seal(String club, Random random) {
        Decision.Sealed sealed = some(club, random);
        if (tries(Days.captain(club), new SealSheet(SHEETS, ClubId.of(club), sealed.sheet(), sealed.secret()))) {
            last.put(ClubId.of(club), sealed);
        }
    }

    private void keep(String club, Random random) {
        Decision.Sealed sealed = some(club, random);
        String receipt = Receipt.of(sealed.secret(), SHEETS.tie(), ClubId.of(club), sealed.sheet());
        if (tries(Days.captain(club), new KeepOnPhone(SHEETS, ClubId.of(club), receipt))) {
            last.put(ClubId.of(club), sealed);
            onPhone.put(ClubId.of(club), sealed);
        }
    }

    private static Decision.Sealed some(String club, Random random) {
        byte[] secret = new byte[32];
        random.nextBytes(secret);
        List<Sheet> sheets = club.equals("N") ? N_SHEETS : S_SHEETS;
        return new Decision.Sealed(
                sheets.get(random.nextInt(sheets.size())), HexFormat.of().formatHex(secret));
    }

    private boolean tries(tiewright.event.Actor by, Decision decision) {
        day.by(by);
        if (!day.refusals(decision).isEmpty()) {
            return false;
        }
        day.does(decision);
        return true;
    }

    private void check(String rerun) {
        Exchange exchange = day.event().exchange(SHEETS);
        List<Fact> facts = day.facts().stream().map(Recorded::fact).toList();
        List<ExchangeFact.SheetsOpened> openings = facts.stream()
                .filter(ExchangeFact.SheetsOpened.class::isInstance)
                .map(ExchangeFact.SheetsOpened.class::cast)
                .toList();
        assertThat(openings).as(rerun).hasSizeLessThanOrEqualTo(1);
        assertThat(day.tie("A1").isOpened()).as(rerun).isEqualTo(!openings.isEmpty());
        for (ExchangeFact.SheetsOpened opening : openings) {
            assertIsLast(opening.home(), opening.homeSecret(), Side.HOME, rerun);
            assertIsLast(opening.away(), opening.awaySecret(), Side.AWAY, rerun);
        }
        if (openings.isEmpty()) {
            assertThat(facts.subList(facts.size() - 1, facts.size()).toString())
                    .as(rerun)
                    .doesNotContainPattern("\\bN[1-8]\\+");
            assertThat(exchange.home().isIn()).as(rerun).isEqualTo(last.containsKey(Asked.N));
            assertThat(exchange.away().isIn()).as(rerun).isEqualTo(last.containsKey(Asked.S));
        }
    }

    private void assertIsLast(Sheet sheet, Optional<String> secret, Side side, String rerun) {
        ClubId club = side == Side.HOME ? Asked.N : Asked.S;
        assertThat(sheet).as(rerun).isEqualTo(last.get(club).sheet());
        assertThat(day.event().exchange(SHEETS).side(side).receipt())
                .as(rerun)
                .contains(Receipt.of(secret.orElseThrow(), SHEETS.tie(), club, sheet));
    }
}
