package tiewright.saturday;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/**
 * How one person fills in forms and sends them, sometimes twice, and goes on while the answer asks for another press. Now and then the
 * network fails: the form does not arrive, or its answer does not, and it goes once more at some later step.
 */
final class Presses {
    private static final int PRESSES = 4;
    private static final int REFUSED = 422;
    private static final double DOES_NOT_ARRIVE = 0.03;
    private static final double ANSWER_IS_LOST = 0.03;
    private static final double GOES_BACK = 0.05;
    /** What ends a day for everybody, or takes longer than a day of this machine has. */
    private static final String NOT_TODAY =
            "/leave|/organiser/private-data.*|/organiser/backup|/organiser/club/.*/remove"
                    + "|/organiser/links/(captains|players)|/organiser/dry-run|/organiser/budget"
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
        press(sight, action, form.get());
    }

    private void press(Sight sight, String action, Element form) {
        Optional<Sight> answer = send(sight.path(), action, form);
        for (int i = 1; i < PRESSES && answer.filter(this::isTriedOn).isPresent(); i++) {
            Optional<Element> next = onwards(answer.get(), action);
            if (next.isEmpty()) {
                return;
            }
            answer = send(answer.get().path(), action, next.get());
        }
    }

    /** One of the small forms of a part of the page. */
    void pressIn(Sight sight, String part) {
        List<Element> forms = sight.page().select(part).select("form[method=post]").stream()
                .filter(form -> !buttons(form).isEmpty())
                .toList();
        dice.anyOf(forms).ifPresent(form -> press(sight, sight.action(form), form));
    }

    /** What did not get through goes once more, as it was; what had counted must not count again. */
    void pressAgain(Person.Unsent form) {
        long before = log.acts();
        Sight answer = see(who.send(form.action(), form.fields()));
        Log.Sent sent = new Log.Sent(who, form.page(), form.action(), form.fields(), answer, before, log.acts());
        if (form.counted()) {
            log.sentAgain(sent);
        } else {
            log.sent(sent);
        }
    }

    /** What was refused is mended and pressed again, mostly. */
    private boolean isTriedOn(Sight answer) {
        return answer.isRead() || answer.status() == REFUSED && dice.chance(0.8);
    }

    /** What is read back is confirmed mostly; below it stands the form once more. */
    private Optional<Element> onwards(Sight answer, String action) {
        List<Element> next = answer.forms().stream()
                .filter(form ->
                        form.attr("action").equals(action) && !main(form).isEmpty())
                .toList();
        return dice.chance(0.85) ? next.stream().findFirst() : dice.anyOf(next);
    }

    private List<Element> mainFirst(Sight sight) {
        List<Element> forms = sight.forms().stream()
                .filter(form -> !sight.action(form).matches(NOT_TODAY)
                        && !sight.action(form).matches(leftAlone))
                .filter(form -> !buttons(form).isEmpty())
                .toList();
        List<Element> main =
                forms.stream().filter(form -> !main(form).isEmpty()).toList();
        return main.isEmpty() || dice.chance(0.3) ? forms : main;
    }

    /** What can be pressed, also where it stands under the thumb outside of the form; without any, nobody can send the form. */
    private static Elements buttons(Element form) {
        String pressed = ":not([hidden]):not([disabled]):not([type=button])";
        Elements buttons = form.select("button" + pressed);
        if (!form.id().isEmpty()) {
            buttons.addAll(form.root().select("button[form=" + form.id() + "]" + pressed));
        }
        return buttons;
    }

    private static Elements main(Element form) {
        return buttons(form).select(".button-main");
    }

    /** Somebody goes back to the form that was taken, puts something else into it and presses again. */
    private void goBack(Log.Sent taken) {
        new Hand(dice, clock).changed(taken.fields()).ifPresent(fields -> {
            long before = log.acts();
            Sight answer = see(who.send(taken.action(), fields));
            log.sent(new Log.Sent(who, taken.page(), taken.action(), fields, answer, before, log.acts()));
        });
    }

    /** The answer, if it asks for more; empty where the press did something, and where this person got no answer. */
    private Optional<Sight> send(String page, String action, Element form) {
        Elements buttons = buttons(form);
        Elements main = main(form);
        Optional<Element> button = dice.anyOf(main.isEmpty() || dice.chance(0.2) ? buttons : main);
        List<Map.Entry<String, String>> fields = new Hand(dice, clock).filled(form, button);
        if (dice.chance(DOES_NOT_ARRIVE)) {
            who.keep(new Person.Unsent(page, action, fields, false));
            return Optional.empty();
        }
        long before = log.acts();
        Sight answer = see(who.send(action, fields));
        Log.Sent sent = new Log.Sent(who, page, action, fields, answer, before, log.acts());
        log.sent(sent);
        if (sent.isDone() && dice.chance(GOES_BACK)) {
            goBack(sent);
        }
        if (dice.chance(ANSWER_IS_LOST)) {
            who.keep(new Person.Unsent(page, action, fields, sent.isDone()));
            return Optional.empty();
        }
        if (dice.chance(0.08)) {
            long done = log.acts();
            Sight again = see(who.send(action, fields));
            log.sentAgain(new Log.Sent(who, page, action, fields, again, done, log.acts()));
        }
        return Optional.of(answer).filter(asks -> !sent.isDone());
    }
}
