package tiewright.event;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How far a blind exchange has come, side by side. It holds receipts, never names: those come with the opening.
 *
 * @param openedAt when both were opened
 */
public record Exchange(
        ExchangeId id,
        SideOfExchange home,
        SideOfExchange away,
        Optional<Instant> openedAt,
        Optional<ExchangeFact.SheetsOpened> opened,
        List<Replacement> replacements) {

    /**
     * One club's side.
     *
     * @param sealings how often a sheet was sealed, when and by whom; the last one would count
     * @param atDesk false while the sheet is kept on the captain's phone
     */
    public record SideOfExchange(
            Sealings sealings,
            Optional<String> receipt,
            boolean atDesk,
            boolean openingAsked,
            boolean told,
            Optional<ExchangeFact.SideRuled> ruled) {

        static final SideOfExchange NOTHING =
                new SideOfExchange(Sealings.NONE, Optional.empty(), false, false, false, Optional.empty());

        /** How often a sheet was sealed. */
        public int sealed() {
            return sealings.times();
        }

        public Optional<Instant> firstSealedAt() {
            return sealings.first();
        }

        public Optional<Instant> sealedAt() {
            return sealings.last();
        }

        public boolean isIn() {
            return receipt.isPresent();
        }

        /** A sheet is in, or a ruling stands in for it. */
        boolean isBegun() {
            return isIn() || ruled.isPresent();
        }

        /** A sheet was sealed or ruled, whatever became of it. */
        boolean wasEverBegun() {
            return sealed() > 0 || ruled.isPresent();
        }

        SideOfExchange sealed(ExchangeFact.SheetSealed fact, Sealings now) {
            return new SideOfExchange(
                    now, Optional.of(fact.receipt()), !fact.keptOnPhone(), openingAsked, false, ruled);
        }

        SideOfExchange returned() {
            return new SideOfExchange(sealings.returned(), Optional.empty(), false, false, false, ruled);
        }

        SideOfExchange handedIn() {
            return new SideOfExchange(sealings, receipt, true, openingAsked, told, ruled);
        }

        SideOfExchange asked() {
            return new SideOfExchange(sealings, receipt, atDesk, true, told, ruled);
        }

        SideOfExchange asTold(boolean now) {
            return new SideOfExchange(sealings, receipt, atDesk, openingAsked, now, ruled);
        }

        SideOfExchange ruled(ExchangeFact.SideRuled fact) {
            return new SideOfExchange(sealings, receipt, atDesk, openingAsked, told, Optional.of(fact));
        }
    }

    /** A change after the opening, through a named door. */
    public record Replacement(ExchangeFact.PairReplaced fact, Instant at) {
        private static final java.util.Set<String> NO_MATTER_OF_HEALTH = java.util.Set.of("clerical", "substitution");

        /** Why somebody does not play is for officials and the own club; others read that the pair was unavailable. */
        Replacement forEyes(Viewer viewer) {
            boolean near =
                    viewer.role().isOfficial() || viewer.isOf(fact.club()) || NO_MATTER_OF_HEALTH.contains(fact.door());
            return near ? this : new Replacement(fact.unsaid(), at);
        }
    }

    public Exchange {
        replacements = List.copyOf(replacements);
    }

    static Exchange begun(ExchangeId id) {
        return new Exchange(
                id, SideOfExchange.NOTHING, SideOfExchange.NOTHING, Optional.empty(), Optional.empty(), List.of());
    }

    public SideOfExchange side(Side side) {
        return side == Side.HOME ? home : away;
    }

    public boolean isOpened() {
        return openedAt.isPresent();
    }

    /** Something is in, ruled or opened. */
    public boolean isBegun() {
        return isOpened() || home.isBegun() || away.isBegun();
    }

    /** The same, or something was and went back. */
    public boolean wasEverBegun() {
        return isOpened() || home.wasEverBegun() || away.wasEverBegun();
    }

    Exchange with(Side side, SideOfExchange state) {
        return new Exchange(
                id, side == Side.HOME ? state : home, side == Side.AWAY ? state : away, openedAt, opened, replacements);
    }

    Exchange opened(ExchangeFact.SheetsOpened fact, Instant at) {
        return new Exchange(id, home, away, Optional.of(at), Optional.of(fact), replacements);
    }

    Exchange replaced(Replacement replacement) {
        java.util.ArrayList<Replacement> more = new java.util.ArrayList<>(replacements);
        more.add(replacement);
        return new Exchange(id, home, away, openedAt, opened, more);
    }
}
