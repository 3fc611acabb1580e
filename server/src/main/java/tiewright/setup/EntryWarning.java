package tiewright.setup;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;

/**
 * Something about the entries that a person should look at; no reason to refuse anything.
 *
 * @param clubs the one or two clubs concerned
 * @param players the one or two players concerned, each of the club at the same place; empty where it is about clubs
 */
public record EntryWarning(Kind kind, List<ClubId> clubs, List<PlayerId> players) {
    /** What to look at; the code is the key of its sentence. */
    public enum Kind {
        /** One name stands in two squads. */
        SAME_PERSON("setup.warning-same-person"),
        /** An initial in one squad, a full first name in another. */
        SHORTENED_PERSON("setup.warning-shortened-person"),
        /** Two names in two squads differ by one letter. */
        LIKE_PERSON("setup.warning-like-person"),
        /** One name stands twice in a squad. */
        TWICE_IN_SQUAD("setup.warning-twice-in-squad"),
        /** Two clubs have names that are alike. */
        LIKE_CLUBS("setup.warning-like-clubs"),
        /** A club without players. */
        NO_SQUAD("setup.warning-no-squad"),
        /** A squad that cannot fill a sheet of the conditions. */
        SHORT_SQUAD("setup.warning-short-squad"),
        /** There are rubbers of a kind for which the squad has no pair, as far as is stated. */
        NO_PAIR_FOR_A_KIND("setup.warning-no-pair-for-a-kind"),
        /** The conditions ask for an order of strength, and a player has no rank. */
        NO_RANK("setup.warning-no-rank"),
        /** Two players of a squad have one rank, and the conditions ask for an order of strength. */
        SAME_RANK("setup.warning-same-rank"),
        /** The pools are drawn and a club stands in none. */
        NOT_DRAWN("setup.warning-not-drawn");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }

        /** Whether two players may be one person: a question that somebody can answer. */
        public boolean isAboutOnePerson() {
            return this == SAME_PERSON || this == SHORTENED_PERSON || this == LIKE_PERSON || this == TWICE_IN_SQUAD;
        }
    }

    public EntryWarning {
        clubs = List.copyOf(clubs);
        players = List.copyOf(players);
    }

    static EntryWarning of(Kind kind, ClubId club) {
        return new EntryWarning(kind, List.of(club), List.of());
    }

    /** What its sentence names: {@code club}, {@code otherClub}, {@code player}, {@code otherPlayer}, their codes. */
    public Map<String, Object> data() {
        Map<String, Object> data = new LinkedHashMap<>();
        put(data, "club", "Club", clubs);
        put(data, "player", "Player", players);
        clubs.stream().findFirst().ifPresent(club -> data.put("code", club.code()));
        clubs.stream().skip(1).findFirst().ifPresent(club -> data.put("otherCode", club.code()));
        players.stream().findFirst().ifPresent(player -> data.put("playerCode", player.code()));
        players.stream().skip(1).findFirst().ifPresent(player -> data.put("otherPlayerCode", player.code()));
        return data;
    }

    private static void put(Map<String, Object> data, String first, String other, List<?> ids) {
        if (!ids.isEmpty()) {
            data.put(first, ids.get(0));
        }
        if (ids.size() > 1) {
            data.put("other" + other, ids.get(1));
        }
    }
}
