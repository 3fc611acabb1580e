package tiewright.cli;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tiewright.desk.CallToCourt;
import tiewright.desk.RecordCard;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateAnswer;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.lineup.KeepForecasts;
import tiewright.scoring.Score;
import tiewright.sheet.KeepOnPhone;
import tiewright.sheet.Receipt;
import tiewright.sheet.SealSheet;

/** The last minutes before the invented day is looked at: rubbers are called, a tie comes level, two cards differ, sheets come in. */
final class DemoMorning {
    /** The rubber that brings its tie level is played in these minutes, so the folder brings it without its score. */
    static final String NOT_YET = "A-2-2,4,";

    private static final TieId LEVEL = TieId.of("A-2-2");
    private static final RubberNo LAST = RubberNo.of(4);
    private static final ClubId FORECAST = ClubId.of("KS");

    private static final TieId KEPT = TieId.of("B-3-2");
    private static final ClubId PHONE = ClubId.of("GR");

    private final Ledger ledger;
    private final DemoClock clock;
    private @Nullable DemoPhone phone;

    DemoMorning(Ledger ledger, DemoClock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Leaves the clock where the day goes on. */
    void play() {
        clock.tellOf(8);
        decide(Role.DESK, "desk", new CallToCourt(LEVEL, LAST, "3"));
        clock.tellOf(7);
        decide(Role.DESK, "desk", new CallToCourt(TieId.of("B-2-1"), RubberNo.of(3), "4"));
        clock.tellOf(5);
        seal();
        clock.tellOf(4);
        decide(Role.DESK, "desk", new CallToCourt(TieId.of("B-2-2"), LAST, "6"));
        clock.tellOf(2);
        decide(
                Role.VOLUNTEER,
                "court 4",
                new RecordCard(TieId.of("B-2-1"), RubberNo.of(2), List.of(Score.of(6, 11)), How.PLAYED));
        clock.tellOf(0);
        decide(Role.DESK, "desk", new RecordCard(LEVEL, LAST, List.of(Score.of(10, 12)), How.PLAYED));
        forecast();
    }

    /**
     * One sheet lies at the desk; of another only its receipt does: its names and secret stay on a phone. No phone was there, so
     * they are told to whoever starts the invented day.
     */
    private void seal() {
        ClubId eager = ClubId.of("WH");
        List<Player> squad = ledger.event().squad(eager);
        Sheet sheet = Sheet.full(pair(squad, 0, 3), pair(squad, 1, 2), pair(squad, 4, 6), pair(squad, 5, 7));
        decide(captain(eager), new SealSheet(ExchangeId.sheets(TieId.of("A-3-1")), eager, sheet, secret()));
        List<Player> away = ledger.event().squad(PHONE);
        Sheet kept = Sheet.full(pair(away, 0, 1), pair(away, 2, 5), pair(away, 3, 4), pair(away, 6, 7));
        String secret = secret();
        decide(captain(PHONE), new KeepOnPhone(ExchangeId.sheets(KEPT), PHONE, Receipt.of(secret, KEPT, PHONE, kept)));
        phone = new DemoPhone(PHONE, KEPT, secret, kept);
    }

    /** What lies on the phone; to be asked once the morning was played. */
    DemoPhone phone() {
        return Objects.requireNonNull(phone, "the morning was not played");
    }

    /** What the advice expected of the first tie of the morning, which is over, and of the one that is level. */
    private void forecast() {
        KeepForecasts keep = new KeepForecasts(
                clock.instant(),
                List.of(
                        new Forecast(TieId.of("A-1-1"), FORECAST, Optional.empty(), 0.64, 1, 0.02),
                        new Forecast(LEVEL, FORECAST, Optional.empty(), 0.55, 1, 0.04)));
        PrivateAnswer answer =
                ledger.decide(PrivateRequest.of(FORECAST, "demo-forecast", KeepForecasts.AUTOMATIC), keep);
        if (!(answer instanceof PrivateAnswer.Done)) {
            throw new IllegalStateException("the invented forecasts cannot be kept: " + answer);
        }
    }

    static Actor captain(ClubId club) {
        return new Actor(Role.CAPTAIN, Optional.of(club), "captain", "demo");
    }

    private void decide(Role role, String label, Decision decision) {
        decide(Actor.of(role, label), decision);
    }

    private void decide(Actor by, Decision decision) {
        Answer answer = ledger.decide(Request.of(UUID.randomUUID().toString(), by), decision);
        if (!(answer instanceof Answer.Done)) {
            throw new IllegalStateException("the invented morning cannot go on: " + answer);
        }
    }

    private static Pair pair(List<Player> squad, int one, int other) {
        return Pair.of(squad.get(one).id(), squad.get(other).id());
    }

    private static String secret() {
        byte[] bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}
