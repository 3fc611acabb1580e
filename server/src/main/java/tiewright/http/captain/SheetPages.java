package tiewright.http.captain;

import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Decision;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.http.visit.ClosedForm;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.SheetFields;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.sheet.AskOpening;
import tiewright.sheet.HandInSheet;
import tiewright.sheet.KeepOnPhone;
import tiewright.sheet.SealSheet;
import tiewright.sheet.TellClub;

/** The captain names pairs and seals them: for the rubbers of a tie, and for its decider. */
final class SheetPages implements Page {

    @Override
    public void at(Routes routes) {
        for (SheetKind kind : SheetKind.values()) {
            String path = OwnExchange.path(kind) + "{tie}";
            routes.get(Door.CAPTAIN, path, visit -> look(OwnExchange.of(visit, kind)));
            routes.post(Door.CAPTAIN, path, visit -> post(OwnExchange.of(visit, kind)));
            routes.post(Door.CAPTAIN, path + "/ask", visit -> {
                OwnExchange here = OwnExchange.of(visit, kind);
                act(here, new AskOpening(here.id(), visit.club()));
            });
            routes.post(Door.CAPTAIN, path + "/tell", visit -> tell(OwnExchange.of(visit, kind)));
            routes.post(Door.CAPTAIN, path + "/untell", visit -> {
                OwnExchange here = OwnExchange.of(visit, kind);
                act(here, new TellClub(here.id(), visit.club(), false));
            });
        }
    }

    private static void look(OwnExchange here) {
        boolean asked = here.visit().ctx().queryParam("from") != null;
        Screen screen = new SheetScreen(here, start(here)).screen(Tried.NOTHING, asked);
        if (here.openedMeanwhile()) {
            here.visit().go(here.path());
        } else {
            here.visit().show(screen);
        }
    }

    /** What the form starts with: the sealed sheet, or another one that was asked for, or nothing. */
    private static Map<RubberNo, List<PlayerId>> start(OwnExchange here) {
        String from = Optional.ofNullable(here.visit().ctx().queryParam("from")).orElse("");
        if (from.equals("last")) {
            return here.lastSheet().map(SheetFields::chosen).orElse(Map.of());
        }
        return here.sealed().map(kept -> SheetFields.chosen(kept.sheet())).orElse(Map.of());
    }

    private static void post(OwnExchange here) {
        Visit visit = here.visit();
        Form form = ClosedForm.of(visit);
        if (!form.isClean()) {
            visit.refuse(form, tried -> open(here, Map.of(), tried));
            return;
        }
        List<RubberNo> rubbers = here.id().rubbers(visit.event().conditions());
        Map<RubberNo, List<PlayerId>> chosen = SheetFields.chosen(form, rubbers);
        switch (form.text("step")) {
            case "seal" -> seal(here, form, chosen);
            case "keep" -> keep(here, form);
            case "hand-in" -> handIn(here, form, chosen);
            case "shuffle" -> {
                int draw = SheetNaming.draws(form) + 1;
                Tried drawn = Tried.again(form.with(Map.of(SheetNaming.DRAWS, Integer.toString(draw))));
                visit.show(open(here, shuffled(here, draw, chosen), drawn));
            }
            default -> visit.show(open(here, chosen, Tried.again(form)));
        }
    }

    private static void handIn(OwnExchange here, Form form, Map<RubberNo, List<PlayerId>> chosen) {
        Visit visit = here.visit();
        Optional<Sheet> sheet = sheet(here, form);
        visit.attempt(
                form,
                () -> new HandInSheet(here.id(), visit.club(), sheet.orElseThrow(), form.text("secret")),
                here.path(),
                tried -> open(here, chosen, tried));
    }

    /** The sheet of the form, once somebody hurt on it was asked. */
    private static Optional<Sheet> sheet(OwnExchange here, Form form) {
        Visit visit = here.visit();
        Optional<Sheet> sheet =
                SheetFields.sheet(form, here.id().rubbers(visit.event().conditions()));
        sheet.ifPresent(named -> HurtFirst.check(visit, form, named));
        return sheet;
    }

    private static void seal(OwnExchange here, Form form, Map<RubberNo, List<PlayerId>> chosen) {
        Visit visit = here.visit();
        Optional<Sheet> sheet = sheet(here, form);
        // a phone that closes its sheet makes the secret, and so the receipt, itself
        String secret = ClosedForm.isOpened(visit)
                ? form.text("secret")
                : visit.hall().tokens().secret();
        visit.attempt(
                form,
                () -> new SealSheet(here.id(), visit.club(), sheet.orElseThrow(), secret),
                here.path(),
                tried -> open(here, chosen, tried));
    }

    /** The same pairs in other rubbers, whichever they stood in. */
    private static Map<RubberNo, List<PlayerId>> shuffled(
            OwnExchange here, int draw, Map<RubberNo, List<PlayerId>> chosen) {
        List<List<PlayerId>> pairs = chosen.values().stream()
                .sorted(Comparator.comparing(
                        pair -> pair.stream().sorted().map(PlayerId::code).collect(Collectors.joining(","))))
                .toList();
        Iterator<List<PlayerId>> drawn =
                BlindOrders.drawn(here.visit(), here.tie().id(), draw, pairs).iterator();
        Map<RubberNo, List<PlayerId>> shuffled = new LinkedHashMap<>();
        chosen.keySet().forEach(rubber -> shuffled.put(rubber, drawn.next()));
        return shuffled;
    }

    /** Only the receipt comes here: the sheet stays on the phone. */
    private static void keep(OwnExchange here, Form form) {
        String receipt = form.mustText("receipt");
        here.visit()
                .attempt(
                        form,
                        () -> new KeepOnPhone(here.id(), here.visit().club(), receipt),
                        here.path(),
                        tried -> open(here, Map.of(), tried));
    }

    /** What is told can be read on every phone of the club: in the open, by whoever listens. So it takes who sealed it. */
    private static void tell(OwnExchange here) {
        Visit visit = here.visit();
        Form form = ClosedForm.of(visit);
        if (form.isClean() && here.isReadInTheAir() && here.own().atDesk() && !here.isSecret(form.text("secret"))) {
            form.fault(Refusal.of("form.told-by-its-phone"));
        }
        visit.attempt(
                form,
                () -> new TellClub(here.id(), visit.club(), true),
                here.path(),
                tried -> screen(here, start(here), tried));
    }

    private static void act(OwnExchange here, Decision decision) {
        here.visit()
                .attempt(here.visit().form(), () -> decision, here.path(), tried -> screen(here, start(here), tried));
    }

    private static Screen screen(OwnExchange here, Map<RubberNo, List<PlayerId>> chosen, Tried tried) {
        return new SheetScreen(here, chosen).screen(tried, false);
    }

    /** Somebody is naming pairs: what stands in the form is the latest that was chosen. */
    private static Screen open(OwnExchange here, Map<RubberNo, List<PlayerId>> chosen, Tried tried) {
        return new SheetScreen(here, chosen).screen(tried, true);
    }
}
