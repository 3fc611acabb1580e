package tiewright.draw;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tiewright.event.ClubId;

/**
 * The order in which clubs that only a lot can part come out, from words spoken in public.
 *
 * <p>The clubs stand in the order of their codes. Number 0 of the {@linkplain PublicLot public lot} with the purpose
 * {@code lot POOL CLUB,CLUB,…} says which of them comes first, the next number which of those left comes second, and so
 * on; so each order is equally likely.
 */
public final class LotOrder {
    private LotOrder() {}

    /** @param level in any order; the answer does not depend on it */
    public static List<ClubId> of(String pool, List<ClubId> level, String spokenSeed) {
        List<ClubId> left = new ArrayList<>(level.stream().sorted().toList());
        String clubs = left.stream().map(ClubId::code).collect(Collectors.joining(","));
        PublicLot lot = new PublicLot(spokenSeed, "lot " + pool + " " + clubs);
        List<ClubId> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(lot.below(BigInteger.valueOf(left.size())).intValue()));
        }
        return List.copyOf(order);
    }
}
