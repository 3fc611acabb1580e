package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.S;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.straight;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;

/** What happens while a captain or a referee fills in a form, and which of it the form must be shown again for. */
class StaleTest {
    private static final String RECEIPT = "0".repeat(64);
    private static final ExchangeId OTHER = ExchangeId.sheets(TieId.of("A2"));
    private static final Decision SEAL = new SealSheet(SHEETS, N, straight("N"), Asked.SECRET);
    private static final Decision KEEP = new KeepOnPhone(SHEETS, N, RECEIPT);
    private static final Decision SUPPLY = new SupplySide(SHEETS, N, straight("N"), "", "");
    private static final Decision FORFEIT = new ForfeitSide(SHEETS, N, "", "");
    private static final List<Decision> ALL = List.of(SEAL, KEEP, SUPPLY, FORFEIT);
    /** Those that name players. */
    private static final List<Decision> NAMING = List.of(SEAL, SUPPLY);

    private static final List<Decision> NAMELESS = List.of(KEEP, FORFEIT);

    private static void stales(List<Decision> decisions, Fact fact) {
        assertThat(decisions)
                .allSatisfy(decision -> assertThat(decision.isStaledBy(fact))
                        .as(decision + " by " + fact)
                        .isTrue());
    }

    private static void leaves(List<Decision> decisions, Fact fact) {
        assertThat(decisions)
                .allSatisfy(decision -> assertThat(decision.isStaledBy(fact))
                        .as(decision + " by " + fact)
                        .isFalse());
    }

    private static Fact entered(String player, ClubId club) {
        return new SetUpFact.PlayerEntered(
                PlayerId.of(player), club, OptionalInt.empty(), Optional.empty(), Optional.empty(), false);
    }

    @Test
    void new_conditions() {
        stales(ALL, new SetUpFact.ConditionsPublished(2, Conditions.of(Preset.CLUB_DAY), OptionalInt.empty()));
    }

    @Test
    void a_change_of_the_own_squad_or_of_somebody_named() {
        stales(ALL, entered("N9", N));
        leaves(ALL, entered("S9", S));
        stales(NAMING, entered("N1", S));
        leaves(NAMELESS, entered("N1", S));
        stales(NAMING, new SetUpFact.PlayerRemoved(PlayerId.of("N8")));
        leaves(ALL, new SetUpFact.PlayerRemoved(PlayerId.of("N9")));
    }

    @Test
    void who_is_named_is_not_here() {
        stales(NAMING, new SetUpFact.CheckedIn(PlayerId.of("N3"), false));
        leaves(ALL, new SetUpFact.CheckedIn(PlayerId.of("N3"), true));
        leaves(ALL, new SetUpFact.CheckedIn(PlayerId.of("N9"), false));
    }

    @Test
    void what_becomes_of_the_own_sheet_of_this_exchange_and_nothing_of_the_other_club() {
        stales(ALL, new ExchangeFact.SheetSealed(SHEETS, N, RECEIPT, false));
        stales(ALL, new ExchangeFact.SheetReturned(SHEETS, N, ""));
        stales(ALL, new ExchangeFact.SideRuled(SHEETS, N, true, 1));
        for (ExchangeId exchange : List.of(SHEETS, OTHER)) {
            ClubId club = exchange.equals(SHEETS) ? S : N;
            leaves(ALL, new ExchangeFact.SheetSealed(exchange, club, RECEIPT, false));
            leaves(ALL, new ExchangeFact.SheetReturned(exchange, club, ""));
            leaves(ALL, new ExchangeFact.SideRuled(exchange, club, true, 1));
        }
    }

    @Test
    void the_opening_of_this_exchange() {
        stales(ALL, opened(SHEETS));
        leaves(ALL, opened(OTHER));
        leaves(ALL, new ExchangeFact.OpeningAsked(SHEETS, N));
    }

    private static Fact opened(ExchangeId exchange) {
        return new ExchangeFact.SheetsOpened(
                exchange, straight("N"), Optional.of(RECEIPT), straight("S"), Optional.of(RECEIPT));
    }

    @Test
    void what_is_logged_by_mistake_names_nobody() {
        assertThat(List.of(SEAL, SUPPLY, new HandInSheet(SHEETS, N, straight("N"), Asked.SECRET)))
                .allSatisfy(decision ->
                        assertThat(decision.toString()).contains("A1", "N").doesNotContain("N1", "N8", Asked.SECRET));
    }
}
