package tiewright.http.desk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Setting;
import tiewright.desk.DecideOnHeat;
import tiewright.desk.Heat;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TextField;
import tiewright.http.views.SafetyView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Heat: what a reading means under the conditions, what people decide, and that nothing on court moves by it. */
final class SafetyPage implements Page {
    private static final String HERE = "/desk/safety";
    private static final String READING = "reading";
    private static final String THERMOMETERS = "thermometers";
    private static final String NOT_DEGREES = "form.not-degrees";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(screen(visit, Tried.NOTHING, Optional.empty())));
        routes.post(Door.DESK, HERE, SafetyPage::read);
        routes.post(Door.DESK, HERE + "/thermometers", SafetyPage::reckon);
    }

    private static void read(Visit visit) {
        Form form = visit.form();
        Optional<Heat> heat = heat(form);
        if (form.text("press").equals("look") && form.isClean()) {
            visit.show(screen(visit, Tried.again(form), heat));
            return;
        }
        visit.attempt(
                form,
                () -> new DecideOnHeat(heat.orElseThrow(), form.text("decision"), form.text("by")),
                HERE,
                tried -> screen(visit, tried, heat));
    }

    private static Optional<Heat> heat(Form form) {
        Optional<Heat.Measure> measure = form.must("measure", Heat.Measure.parse(form.text("measure")));
        Optional<Integer> tenths = form.must("degrees", degrees(form, "degrees"));
        return measure.flatMap(which -> tenths.map(value -> new Heat(which, value)));
    }

    /** Tenths of a degree from <em>30.5</em> or <em>30,5</em>. */
    private static Optional<Integer> degrees(Form form, String field) {
        return form.read(field, NOT_DEGREES, typed -> {
            String plain = typed.replace(',', '.').replace("°C", "").strip();
            if (!plain.matches("-?\\d{1,3}(\\.\\d{1,2})?")) {
                throw new IllegalArgumentException(typed);
            }
            return new BigDecimal(plain)
                    .movePointRight(1)
                    .setScale(0, java.math.RoundingMode.HALF_UP)
                    .intValueExact();
        });
    }

    private static void reckon(Visit visit) {
        Form form = visit.form();
        Optional<Integer> wet = form.must("wet", degrees(form, "wet"));
        Optional<Integer> globe = form.must("globe", degrees(form, "globe"));
        Optional<Integer> air = form.must("air", degrees(form, "air"));
        if (form.isClean()) {
            Heat heat =
                    new Heat(Heat.Measure.WBGT, Heat.wbgt(wet.orElseThrow(), globe.orElseThrow(), air.orElseThrow()));
            visit.show(screen(visit, Tried.again(form), Optional.of(heat)));
        } else {
            visit.refuse(form, tried -> screen(visit, tried, Optional.empty()));
        }
    }

    private static Screen screen(Visit visit, Tried tried, Optional<Heat> heat) {
        VisibleEvent event = visit.event();
        return Screen.of(
                "safety",
                visit.say("page-desk.heat-and-safety"),
                new SafetyView(
                        tried.refusal(),
                        heat.map(read -> state(read, event)).orElse(State.NONE),
                        heat.map(read -> said(visit, read)).orElse(List.of()),
                        List.of(
                                visit.say("page-desk.no-number-is-a-clearance"),
                                visit.say("page-desk.printed-conditions-override")),
                        reading(visit.words(), Fields.of(READING, tried), heat),
                        thermometers(visit.words(), Fields.of(THERMOMETERS, tried)),
                        log(visit),
                        PublishedHeat.table(visit.words())));
    }

    private static State state(Heat heat, VisibleEvent event) {
        return switch (heat.tier(event.conditions())) {
            case BELOW -> new State(Mark.PLAIN, Words.say(event, "page-desk.below-the-caution-of-the"));
            case CAUTION -> new State(Mark.HELD, Words.say(event, "page-desk.caution"));
            case STOP -> new State(Mark.STOP, Words.say(event, "page-desk.the-conditions-stop-play-here"));
        };
    }

    private static List<String> said(Visit visit, Heat heat) {
        Words words = visit.words();
        List<String> lines = new ArrayList<>();
        lines.add(words.sentence(
                "page.heat-" + heat.tier(visit.event().conditions()).code(),
                Map.of(
                        "read",
                        read(words, heat),
                        "caution",
                        limit(visit, heat.measure().caution()),
                        "stop",
                        limit(visit, heat.measure().stop()))));
        heat.published().ifPresent(tier -> lines.add(words.sentence("page.heat-published-" + tier.code(), Map.of())));
        lines.add(words.say("page-desk.nothing-was-changed-on-any"));
        return lines;
    }

    private static String limit(Visit visit, Setting setting) {
        return visit.event().conditions().value(setting);
    }

    private static String read(Words words, Heat heat) {
        return words.say("page-desk.heat-read", "measure", heat.measure().code(), "degrees", heat.degrees());
    }

    private static WorkView.WorkForm reading(Words words, Fields fields, Optional<Heat> heat) {
        return new WorkView.WorkForm(
                READING,
                HERE,
                asked(words, fields, heat),
                List.of(
                        Button.other(words.say("page-desk.what-do-the-conditions-say"))
                                .sending("press", "look"),
                        Button.main(words.say("page-desk.log-this-decision")).sending("press", "log")));
    }

    private static List<FormField> asked(Words words, Fields fields, Optional<Heat> heat) {
        String measure = heat.map(one -> one.measure().code()).orElse(Heat.Measure.WBGT.code());
        return List.of(
                fields.oneOf(
                        "measure",
                        words.say("page-desk.what-was-measured"),
                        measure,
                        List.of(
                                Option.of("wbgt", words.say("page-desk.measure-wbgt"), false),
                                Option.of("air", words.say("page-desk.measure-air"), false))),
                fields.text(
                                "degrees",
                                TextField.Kind.SHORT,
                                words.say("page-desk.degrees-celsius"),
                                heat.map(Heat::degrees).orElse(""))
                        .withHint(words.say("page-desk.such-as-degrees"))
                        .mustBeFilled(),
                fields.text("decision", TextField.Kind.LONG, words.say("page-desk.what-is-decided"), "")
                        .withHint(words.say("page-desk.such-as-decided")),
                fields.line("by", words.say("page-desk.who-decides"), "")
                        .withAutocomplete("name")
                        .withMaxLength(200));
    }

    private static WorkView.WorkForm thermometers(Words words, Fields fields) {
        return new WorkView.WorkForm(
                THERMOMETERS,
                HERE + "/thermometers",
                List.of(
                        fields.text("wet", TextField.Kind.SHORT, words.say("page-desk.wet-bulb"), ""),
                        fields.text("globe", TextField.Kind.SHORT, words.say("page-desk.globe"), ""),
                        fields.text("air", TextField.Kind.SHORT, words.say("page-desk.air"), "")),
                List.of(Button.other(words.say("page-desk.reckon-the-wbgt"))));
    }

    private static List<String> log(Visit visit) {
        List<String> lines = new ArrayList<>(visit.event().heat().stream()
                .map((Event.Heat one) -> line(visit, one))
                .toList());
        Collections.reverse(lines);
        return lines;
    }

    private static String line(Visit visit, Event.Heat one) {
        OfficialFact.HeatDecided decided = one.decided();
        Heat heat = new Heat(Heat.Measure.parse(decided.measure()).orElse(Heat.Measure.WBGT), decided.tenths());
        return HallClock.said(visit.event().clock(one.at())) + ": " + read(visit.words(), heat) + ", "
                + visit.words().sentence("facts.heat.tier." + decided.tier(), Map.of()) + ". " + decided.by() + ": "
                + decided.decision();
    }
}
