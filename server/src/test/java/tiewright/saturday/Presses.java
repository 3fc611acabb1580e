package tiewright.saturday;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/** How one person fills in forms and sends them, sometimes twice, and goes on while the answer asks for another press. */
final class Presses {
    private static final int PRESSES = 3;
    /** What ends a day for everybody, or takes longer than a day of this machine has. */
    private static final String NOT_TODAY =
            "/leave|/organiser/private-data.*|/organiser/backup|/organiser/club/.*/remove"
                    + "|/organiser/links/(captains|players)|/organiser/day-breaks.*|/organiser/dry-run|/organiser/budget"
                    + "|/organiser/event|/organiser/draw|/organiser/knockout|/organiser/opening|/captain/film.*|/captain/past.*";

    private final Person who;
    private final Dice dice;
    private final String clock;
    private final Log log;
    private String leftAlone = "";

    Presses(Person who, Dice dice, String clock, Log log) {
        this.who = who;
        this.dice = dice;
        this.clock = clock;
        this.log = log;
    }

    /** Sends no form to these addresses. */
    void leave(String addresses) {
        leftAlone = addresses;
    }

    Sight open(String path) {
        return see(who.open(path));
    }

    private Sight see(Sight sight) {
        log.saw(sight);
        return sight;
    }

    /** Fills in a form of the page and sends it, and goes on while the answer has a main button of the same address. */
    void press(Sight sight) {
        Optional<Element> form = dice.anyOf(mainFirst(sight));
        if (form.isEmpty()) {
            return;
        }
        String action = sight.action(form.get());
        Sight answer = send(sight.path(), action, form.get());
        for (int i = 1; i < PRESSES && answer.status() == 200; i++) {
            Optional<Element> next = onwards(answer, action);
            if (next.isEmpty()) {
                return;
            }
            answer = send(answer.path(), action, next.get());
        }
    }

    private static Optional<Element> onwards(Sight answer, String action) {
        return answer.forms().stream()
                .filter(form -> form.attr("action").equals(action)
                        && !form.select(".button-main").isEmpty())
                .reduce((first, second) -> second);
    }

    private List<Element> mainFirst(Sight sight) {
        List<Element> forms = sight.forms().stream()
                .filter(form -> !sight.action(form).matches(NOT_TODAY)
                        && !sight.action(form).matches(leftAlone))
                .filter(form -> !buttons(form).isEmpty())
                .toList();
        List<Element> main = forms.stream()
                .filter(form -> !form.select(".button-main").isEmpty())
                .toList();
        return main.isEmpty() || dice.chance(0.3) ? forms : main;
    }

    /** What can be pressed; without any, nobody can send the form. */
    private static Elements buttons(Element form) {
        return form.select("button:not([hidden]):not([disabled]):not([type=button])");
    }

    private Sight send(String page, String action, Element form) {
        Elements buttons = buttons(form);
        Elements main = form.select("button.button-main:not([hidden]):not([disabled])");
        Optional<Element> button = dice.anyOf(main.isEmpty() || dice.chance(0.2) ? buttons : main);
        List<Map.Entry<String, String>> fields = new Hand(dice, clock).filled(form, button);
        long before = log.acts();
        Sight answer = see(who.send(action, fields));
        log.sent(new Log.Sent(who, page, action, fields, answer, before, log.acts()));
        if (dice.chance(0.08)) {
            long done = log.acts();
            Sight again = see(who.send(action, fields));
            log.sentAgain(new Log.Sent(who, page, action, fields, again, done, log.acts()));
        }
        return answer;
    }
}
