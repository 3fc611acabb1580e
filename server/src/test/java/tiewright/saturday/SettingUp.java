package tiewright.saturday;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.jsoup.nodes.Element;
import tiewright.conditions.Setting;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.SetUpFact;
import tiewright.http.Served;

/**
 * The organiser makes an event from nothing, through pages alone and in the order of its first page: the clubs, squads, courts and
 * conditions of a scene, then what the pages make of them. A page that does not take what belongs there ends the day with an error.
 */
final class SettingUp {
    private static final String FIRST_PAGE = "/organiser";
    private static final String PLAN = "/organiser/plan";
    private static final String WORDS = "river, lantern, nine";
    private static final String WITNESS = "R. Ashgrove";
    private static final int CLUBS_OF_A_POOL = 5;
    private static final int BETWEEN_STARTS = 50;

    private final Served served;
    private final Person organiser;
    private final Scene scene;
    private final Dice dice;
    private final Log log;

    SettingUp(Served served, Person organiser, Scene scene, Dice dice) {
        this.served = served;
        this.organiser = organiser;
        this.scene = scene;
        this.dice = dice;
        this.log = Log.of(served);
    }

    /** What was seen and sent. */
    Log run() {
        about(facts(SetUpFact.EventDescribed.class).get(0));
        sends("/organiser/help", Map.of("firstAid", "By the door."));
        conditions(facts(SetUpFact.ConditionsPublished.class).get(0));
        int courts = facts(SetUpFact.CourtSet.class).size();
        sendsTo("/organiser/courts", "/organiser/courts/add", Map.of("court", "1-" + courts));
        facts(SetUpFact.ClubEntered.class).forEach(this::club);
        sends("/organiser/opening", Map.of("organiserIsCaptain", "no"));
        sends("/organiser/draw", drawn("pools", Math.max(1, scene.clubs().size() / CLUBS_OF_A_POOL)));
        knockout();
        if (dice.chance(0.3) || !planned()) {
            timesByHand(courts);
        }
        return log;
    }

    private <F extends SetUpFact> List<F> facts(Class<F> kind) {
        return scene.facts().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private void about(SetUpFact.EventDescribed about) {
        sends(
                "/organiser/event",
                Map.of(
                        "name", about.name(),
                        "date", about.date().toString(),
                        "venue", about.venue(),
                        "zone", about.zone().getId(),
                        "starts", about.starts().toString(),
                        "closes", about.venueCloses().map(LocalTime::toString).orElse("")));
    }

    private void conditions(SetUpFact.ConditionsPublished published) {
        Map<String, String> typed = new HashMap<>();
        typed.put("preset", published.conditions().base().printed());
        for (Setting setting : Setting.values()) {
            typed.put(setting.code(), published.conditions().value(setting));
        }
        sends("/organiser/conditions", typed);
    }

    private void club(SetUpFact.ClubEntered club) {
        sends("/organiser/clubs", Map.of("club", club.club().code(), "name", club.name()));
        Map<String, String> typed = new HashMap<>();
        int row = 0;
        for (SetUpFact.PlayerEntered player : facts(SetUpFact.PlayerEntered.class)) {
            if (player.club().equals(club.club())) {
                PrivateNote.PersonNamed person = named(player.player());
                String place = "new-" + ++row + "-";
                typed.put(place + "name", person.person().name());
                typed.put(place + "rank", said(player.rank()));
                typed.put(place + "bornYear", said(person.person().bornYear()));
            }
        }
        String page = "/organiser/club/" + club.club();
        sendsTo(page, page + "/squad", typed);
    }

    private PrivateNote.PersonNamed named(PlayerId player) {
        return scene.notes().stream()
                .filter(PrivateNote.PersonNamed.class::isInstance)
                .map(PrivateNote.PersonNamed.class::cast)
                .filter(note -> note.player().equals(player))
                .findFirst()
                .orElseThrow();
    }

    private static String said(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static Map<String, String> drawn(String field, int number) {
        return Map.of(field, Integer.toString(number), "spokenSeed", WORDS, "witness", WITNESS);
    }

    /** As many go on as there are; where a level tie could not be decided there is no knockout. */
    private void knockout() {
        int pools = served.ledger.event().pools().size();
        int smallest = served.ledger.event().pools().values().stream()
                .mapToInt(List::size)
                .min()
                .orElse(0);
        int most = pools > 1 ? Math.min(2, smallest) : Math.min(smallest, 4);
        int each = pools == 1 && most == 3 ? 2 : most;
        tries("/organiser/knockout", "/organiser/knockout", drawn("fromEachPool", each));
    }

    private boolean planned() {
        sendsTo(PLAN, PLAN + "/make", Map.of("seconds", "2"));
        served.awaitPlans();
        boolean found = form(organiser.look(PLAN), PLAN + "/publish").isPresent();
        if (found) {
            sendsTo(PLAN, PLAN + "/publish", Map.of("by", WITNESS));
        }
        return found;
    }

    private void timesByHand(int courts) {
        String page = "/organiser/times";
        Map<String, String> typed = new LinkedHashMap<>();
        int number = 0;
        for (Element start : organiser.look(page).page().select("input[name$=-start]")) {
            String tie = start.attr("name").replaceFirst("start$", "");
            LocalTime at = LocalTime.of(9, 30).plusMinutes((long) BETWEEN_STARTS * (number / courts));
            typed.put(tie + "start", at.toString());
            typed.put(tie + "court", Integer.toString(number++ % courts + 1));
        }
        sends(page, typed);
    }

    private void sends(String page, Map<String, String> typed) {
        sendsTo(page, page, typed);
    }

    private void sendsTo(String page, String action, Map<String, String> typed) {
        Log.Sent sent = tries(page, action, typed);
        if (!sent.isTaken() && !sent.isDone()) {
            throw new IllegalStateException("the organiser is stuck at " + page + ": "
                    + sent.answer().page().select(".refusal,.error").text());
        }
    }

    private Log.Sent tries(String page, String action, Map<String, String> typed) {
        Sight there = organiser.open(page);
        log.saw(there);
        Element form =
                form(there, action).orElseThrow(() -> new IllegalStateException(there + " has no form to " + action));
        List<Map.Entry<String, String>> fields = AsItStands.with(form, typed);
        long before = log.acts();
        Sight answer = organiser.send(action, fields);
        log.saw(answer);
        Log.Sent sent = new Log.Sent(organiser, page, action, fields, answer, before, log.acts());
        log.sent(sent);
        log.saw(organiser.look(FIRST_PAGE));
        return sent;
    }

    private static Optional<Element> form(Sight sight, String action) {
        return sight.forms().stream()
                .filter(one -> sight.action(one).equals(action))
                .findFirst();
    }
}
