package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Role;

/** Every role opens every page with nonsense in the address and sends every form with nonsense in its fields. */
class NonsenseTest {
    private static final long SEED = Long.getLong("seed", new Random().nextLong());
    private static final int FORMS_SENT = 60;
    private static final List<String> NONSENSE = List.of(
            "",
            "-1",
            "0",
            "99999999999999999999",
            "1e9",
            "NaN",
            "2026-02-30",
            "25:61",
            "24:00",
            "+999999999-12-31",
            "<script>alert(1)</script>",
            "'; DROP TABLE ledger; --",
            "../../etc/passwd",
            "\u202eabc",
            "\uD83D\uDE00",
            "a".repeat(10_000),
            "\u0000\u0001\u001b[31m",
            "\r\nX: y",
            "N1",
            "A1",
            "home",
            "yes",
            "1",
            "11",
            "\u0663",
            "{{7*7}}",
            "UTC",
            "GMT+99",
            "a\nb",
            "1;2",
            "=1+1",
            "\uD83D");
    private static final List<String> ROUTES = List.of(
            "/tie/{x}",
            "/club/{x}",
            "/player/{x}",
            "/player/{x}/court",
            "/paper/tie/{x}",
            "/cards/{x}",
            "/cards/A1/{x}",
            "/cards/{x}/1",
            "/cards/A1/{x}/correct",
            "/captain/sheet/{x}",
            "/captain/decider/{x}",
            "/captain/proposal/{x}",
            "/desk/tie/{x}",
            "/organiser/club/{x}",
            "/desk/notice/{x}",
            "/club/{x}/calendar.ics",
            "/player/{x}/calendar.ics",
            "/enter/{x}",
            "/tables?as-of={x}",
            "/captain/sheet/A1?from={x}",
            "/organiser/conditions?preset={x}",
            "/{x}");
    private static final List<String> PAGES = List.of(
            "/",
            "/conditions",
            "/captain",
            "/captain/sheet/A1",
            "/captain/decider/A1",
            "/captain/squad",
            "/captain/proposal/A1",
            "/captain/day",
            "/desk",
            "/desk/check-in",
            "/desk/tie/A1",
            "/cards/A1/1",
            "/cards/A1/1/correct",
            "/organiser",
            "/organiser/event",
            "/organiser/conditions",
            "/organiser/clubs",
            "/organiser/club/N",
            "/organiser/courts",
            "/organiser/opening",
            "/organiser/draw",
            "/organiser/knockout",
            "/organiser/times",
            "/organiser/plan",
            "/organiser/day-breaks",
            "/organiser/budget",
            "/desk/safety",
            "/organiser/links",
            "/organiser/rulings",
            "/organiser/notices",
            "/organiser/signing",
            "/tables",
            "/needs",
            "/bracket");
    private static final Pattern ACTION = Pattern.compile("<form\\b[^>]*action=\"([^\"]+)\"");

    private final Random random = new Random(SEED);

    private static Served oneTie() {
        Days day = Days.oneTie();
        return Served.of(day, Days.moment("09:00"));
    }

    @Test
    void nonsense_is_answered_in_words_whoever_sends_it() {
        Set<String> sent = new LinkedHashSet<>();
        for (Role role : Role.values()) {
            try (Served served = oneTie()) {
                Guest guest = guest(served, role);
                for (String route : ROUTES) {
                    String path = route.replace(
                            "{x}",
                            URLEncoder.encode(nonsense(1_000), StandardCharsets.UTF_8)
                                    .replace("+", "%20"));
                    sane(role, "GET " + path, guest.get(path));
                }
                List<String[]> forms = forms(guest);
                for (int i = 0; i < FORMS_SENT && !forms.isEmpty(); i++) {
                    String[] form = forms.get(random.nextInt(forms.size()));
                    Map<String, String> fields = spoilt(guest.get(form[0]), form[1]);
                    sane(role, "POST " + form[1] + " " + fields, guest.post(form[1], fields));
                    sent.add(form[1]);
                }
            }
        }
        assertThat(sent).as("forms that were sent at all").hasSizeGreaterThan(20);
    }

    private static Guest guest(Served served, Role role) {
        return switch (role) {
            case PUBLIC -> served.stranger();
            case CAPTAIN -> served.captain("N");
            case PLAYER -> served.player("N", "N1");
            case VOLUNTEER, DESK, REFEREE, ORGANISER -> served.as(role);
        };
    }

    /** A page and the address of a form on it, for every form this guest is shown. */
    private static List<String[]> forms(Guest guest) {
        List<String[]> forms = new ArrayList<>();
        for (String page : PAGES) {
            Matcher action = ACTION.matcher(guest.get(page).body());
            while (action.find()) {
                if (!action.group(1).equals("/leave")) {
                    forms.add(new String[] {page, action.group(1)});
                }
            }
        }
        return forms;
    }

    /** The form as it stands now, some fields left out, some turned to nonsense; a form that is gone is sent all the same. */
    private Map<String, String> spoilt(Guest.Got page, String action) {
        Map<String, String> fields = new LinkedHashMap<>();
        Map<String, String> stands = page.body().contains("method=\"post\" action=\"" + action + "\"")
                ? FormFields.of(page, action)
                : Map.of("by", "");
        stands.forEach((name, value) -> {
            int chance = random.nextInt(10);
            if (chance > 0) {
                fields.put(name, chance < 6 ? nonsense(10_000) : value);
            }
        });
        fields.put("device-time", nonsense(100));
        return fields;
    }

    private String nonsense(int longest) {
        String one = NONSENSE.get(random.nextInt(NONSENSE.size()));
        return one.length() <= longest ? one : one.substring(0, longest);
    }

    private static void sane(Role role, String what, Guest.Got got) {
        String shown = what.length() <= 2_000 ? what : what.substring(0, 2_000);
        assertThat(got.status())
                .as("-Dseed=%d %s %s: %s", SEED, role, shown, got.text())
                .isLessThan(500);
        assertThat(got.body())
                .as("-Dseed=%d %s %s", SEED, role, shown)
                .doesNotContain("\tat ", "Exception", "<script>alert");
    }
}
