package tiewright.http.captain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.VisibleEvent;

/** How a captain calls the own players where room is short: by the first word of the name, whole where two share it. */
final class GivenNames {
    private final Map<PlayerId, String> names = new HashMap<>();

    GivenNames(VisibleEvent event, List<Player> squad) {
        Map<String, Long> shared = squad.stream()
                .map(player -> first(event.name(player.id())))
                .collect(Collectors.groupingBy(name -> name, Collectors.counting()));
        for (Player player : squad) {
            String whole = event.name(player.id());
            names.put(player.id(), shared.getOrDefault(first(whole), 0L) == 1 ? first(whole) : whole);
        }
    }

    private static String first(String name) {
        return name.split(" ", 2)[0];
    }

    String of(PlayerId player) {
        return names.getOrDefault(player, player.code());
    }

    String of(List<PlayerId> players) {
        return players.stream().map(this::of).collect(Collectors.joining(" + "));
    }
}
