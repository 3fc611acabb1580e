package tiewright;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * What gives another answer at another time, on another machine or in another run: clocks, files, chance without a seed, and
 * what the machine takes for its language, letters or time zone. A room that computes asks for none of it.
 */
final class OuterWorld {
    private static final Pattern CALLS = Pattern.compile(String.join(
            "|",
            // clocks
            "java\\.time\\.\\w+\\.now\\(.*",
            "java\\.time\\.(Clock|InstantSource)\\..*",
            "java\\.util\\.Date\\.<init>\\(\\)",
            "java\\.util\\.Calendar\\.getInstance.*",
            // the machine; System.arraycopy alone is arithmetic
            "java\\.lang\\.System\\.(?!arraycopy\\().*",
            "java\\.lang\\.(Thread|Runtime|Process\\w*)\\..*",
            "java\\.lang\\.Class(Loader)?\\.getResource.*",
            "java\\.util\\.(ResourceBundle|Timer)\\..*",
            "java\\.util\\.(prefs|logging|jar|zip)\\..*",
            // chance
            "java\\.util\\.(Random|SplittableRandom)\\.<init>\\(\\)",
            "java\\.util\\.UUID\\.randomUUID\\(\\)",
            "java\\.lang\\.(Strict)?Math\\.random\\(\\)",
            "java\\.util\\.concurrent\\.ThreadLocalRandom\\..*",
            "java\\.util\\.random\\.\\w+\\.(getDefault|of|create)\\(.*",
            "java\\.security\\.SecureRandom\\..*",
            "java\\.util\\.Collections\\.shuffle\\(java\\.util\\.List\\)",
            // language, letters, time zone
            "java\\.util\\.(Locale|TimeZone)\\.[gs]etDefault\\(.*",
            "java\\.time\\.ZoneId\\.systemDefault\\(\\)",
            "java\\.nio\\.charset\\.Charset\\.defaultCharset\\(\\)",
            "java\\.lang\\.String\\.(toLowerCase|toUpperCase|getBytes)\\(\\)",
            "java\\.lang\\.String\\.<init>\\((\\[B|byte\\[\\])(, int, int)?\\)",
            "java\\.lang\\.String\\.(format\\(java\\.lang\\.String, .*|formatted\\(.*)",
            "java\\.text\\.\\w+\\.get\\w*Instance\\(\\)",
            "java\\.text\\.\\w+Format\\.<init>\\((java\\.lang\\.String)?\\)",
            "java\\.time\\.format\\.DateTimeFormatter\\.(ofPattern\\(java\\.lang\\.String\\)|ofLocalized.*)"));

    private static final Pattern TYPES = Pattern.compile("java\\.(io|net|sql|nio\\.file|nio\\.channels)\\..*");

    private OuterWorld() {}

    /** Every such call, reference or type in it, as {@code java.lang.System.nanoTime()}. */
    static Set<String> of(JavaClass type) {
        Set<String> found = new TreeSet<>();
        type.getAccessesFromSelf().stream()
                .map(access -> access.getTarget().getFullName())
                .filter(name -> CALLS.matcher(name).matches())
                .forEach(found::add);
        type.getDirectDependenciesFromSelf().stream()
                .map(use -> use.getTargetClass().getBaseComponentType().getName())
                .filter(name -> TYPES.matcher(name).matches())
                .forEach(found::add);
        return found;
    }
}
