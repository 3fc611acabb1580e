package tiewright.saturday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.nodes.Element;

/**
 * What somebody types into a form: what stands there already, what can be chosen, and where words or numbers are asked for
 * some that could be meant. It knows no page; a field says by its kind and name what it wants.
 */
final class Hand {
    private static final List<String> PEOPLE = List.of("R. Ashgrove", "Mina Toller", "J. Ferriby");
    private static final List<String> REASONS =
            List.of("The card shows it.", "Twisted an ankle.", "A wet court.", "They went home.");

    private final Dice dice;
    private final String clock;
    private final Set<String> chosen = new TreeSet<>();
    private boolean straight; // players down the list, as a captain would who has to keep an order of strength

    /**
     * @param clock the time in the hall, such as {@code 10:35}
     */
    Hand(Dice dice, String clock) {
        this.dice = dice;
        this.clock = clock;
    }

    /** The form with its hidden fields and everything filled in, ready to be sent with this button. */
    List<Map.Entry<String, String>> filled(Element form, Optional<Element> button) {
        chosen.clear();
        straight = dice.chance(0.6);
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (Element field : form.select("input[name],select[name],textarea[name]")) {
            put(fields, form, field);
        }
        scores(fields);
        button.filter(one -> !one.attr("name").isEmpty())
                .ifPresent(one -> fields.put(one.attr("name"), List.of(one.attr("value"))));
        List<Map.Entry<String, String>> all = new ArrayList<>();
        fields.forEach((name, values) -> values.forEach(value -> all.add(Map.entry(name, value))));
        return all;
    }

    /** The same form with other scores, or another reason; empty where it has neither. */
    Optional<List<Map.Entry<String, String>>> changed(List<Map.Entry<String, String>> fields) {
        List<Map.Entry<String, String>> changed =
                fields.stream().map(this::changed).toList();
        return Optional.of(changed).filter(other -> !other.equals(fields));
    }

    private Map.Entry<String, String> changed(Map.Entry<String, String> field) {
        String name = field.getKey();
        if (name.matches("(home|away)-[0-9]+") && field.getValue().matches("[0-9]+")) {
            return Map.entry(
                    name.startsWith("home") ? name.replace("home", "away") : name.replace("away", "home"),
                    field.getValue());
        }
        return name.equals("reason") && !field.getValue().isEmpty() ? Map.entry(name, dice.any(REASONS)) : field;
    }

    private void put(Map<String, List<String>> fields, Element form, Element field) {
        String name = field.attr("name");
        switch (field.tagName().equals("input") ? field.attr("type") : field.tagName()) {
            case "hidden" -> fields.put(name, List.of(field.attr("value")));
            case "select" -> fields.put(name, List.of(option(field)));
            case "radio" -> fields.computeIfAbsent(name, one -> radio(form, one));
            case "checkbox" -> {
                if (field.hasAttr("checked") != dice.chance(0.3)) {
                    fields.merge(name, List.of(field.attr("value")), Hand::both);
                }
            }
            case "textarea" -> fields.put(name, List.of(words(field, field.text())));
            case "file" -> {}
            default -> fields.put(name, List.of(words(field, field.attr("value"))));
        }
    }

    private static List<String> both(List<String> one, List<String> other) {
        List<String> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }

    private List<String> radio(Element form, String name) {
        List<Element> choices = form.select("input[type=radio]").stream()
                .filter(one -> one.attr("name").equals(name) && !one.hasAttr("disabled"))
                .toList();
        Optional<Element> checked =
                choices.stream().filter(one -> one.hasAttr("checked")).findFirst();
        return List.of(checked.filter(one -> dice.chance(0.8))
                .orElseGet(() -> dice.any(choices))
                .attr("value"));
    }

    /** The same person or court is seldom chosen twice in one form. */
    private String option(Element select) {
        List<String> values = select.select("option:not([disabled])").stream()
                .map(option -> option.attr("value"))
                .filter(value -> !value.isEmpty())
                .toList();
        Optional<String> now = Optional.ofNullable(select.selectFirst("option[selected]:not([disabled])"))
                .map(option -> option.attr("value"))
                .filter(value -> !value.isEmpty());
        boolean downTheList = straight && select.attr("name").startsWith("sheet-");
        if (now.isPresent() && !downTheList && dice.chance(0.8)) {
            chosen.add(now.get());
            return now.get();
        }
        List<String> fresh =
                values.stream().filter(value -> !chosen.contains(value)).toList();
        List<String> from = fresh.isEmpty() || dice.chance(0.02) ? values : fresh;
        String value = (downTheList ? from.stream().findFirst() : dice.anyOf(from)).orElse("");
        chosen.add(value);
        return value;
    }

    private String words(Element field, String before) {
        String name = field.attr("name");
        if (name.matches("(home|away)-[0-9]+")) {
            return before;
        }
        if (name.equals("stopped")) {
            return clock;
        }
        if (name.endsWith("-court") && before.isEmpty()) {
            return dice.any(List.of("", "1", "2"));
        }
        if (name.endsWith("-start")) {
            return before.isEmpty() ? later(dice.between(20, 75)) : before;
        }
        if (name.equals("ready") || name.equals("from") && dice.chance(0.5)) {
            return later(dice.between(10, 75));
        }
        if (!before.isEmpty() && dice.chance(0.9)) {
            return before;
        }
        if (name.equals("by") || name.endsWith("-by") || name.equals("witness")) {
            return dice.any(PEOPLE);
        }
        if (field.attr("type").equals("time")) {
            return field.hasAttr("required") || dice.chance(0.3) ? clock : "";
        }
        if (field.attr("type").equals("date")) {
            return before;
        }
        if (field.attr("inputmode").equals("numeric") || field.attr("inputmode").equals("decimal")) {
            return field.hasAttr("required") || dice.chance(0.3) ? Integer.toString(dice.between(1, 4)) : "";
        }
        return field.hasAttr("required") || dice.chance(0.7) ? dice.any(REASONS) : "";
    }

    private String later(int minutes) {
        return LocalTime.parse(clock).plusMinutes(minutes).toString();
    }

    /** Scores that could have been played: games to eleven, or now and then what nobody can have meant. */
    private void scores(Map<String, List<String>> fields) {
        boolean played = fields.getOrDefault("how", List.of("played")).contains("played");
        for (int game = 1; fields.containsKey("home-" + game); game++) {
            if (!fields.get("home-" + game).contains("") && dice.chance(0.9)) {
                continue;
            }
            int loser = dice.between(0, 10);
            int winner = loser == 10 ? 12 : 11;
            boolean home = dice.chance(0.5);
            if (!played || dice.chance(0.03)) {
                winner = dice.between(0, 10);
            }
            fields.put("home-" + game, List.of(Integer.toString(home ? winner : loser)));
            fields.put("away-" + game, List.of(Integer.toString(home ? loser : winner)));
        }
    }
}
