package tiewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which room may know which. */
@AnalyzeClasses(packages = "tiewright", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    @ArchTest
    static final ArchRule scoring_knows_no_other_room = noClasses()
            .that()
            .resideInAPackage("tiewright.scoring..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.conditions..",
                    "tiewright.event..",
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..");

    @ArchTest
    static final ArchRule conditions_know_only_scoring = noClasses()
            .that()
            .resideInAPackage("tiewright.conditions..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.event..",
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..");

    @ArchTest
    static final ArchRule the_event_knows_no_room_that_computes_from_it = noClasses()
            .that()
            .resideInAPackage("tiewright.event..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..");

    @ArchTest
    static final ArchRule computing_rooms_know_no_database_server_or_words = noClasses()
            .that()
            .resideInAnyPackage(
                    "tiewright.scoring..",
                    "tiewright.conditions..",
                    "tiewright.event..",
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.correction..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.timetable..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "io.javalin..",
                    "org.jooq..",
                    "org.h2..",
                    "tiewright.schema..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..",
                    "java.sql..");

    @ArchTest
    static final ArchRule no_room_below_knows_the_desk_or_the_set_up = noClasses()
            .that()
            .resideInAnyPackage("tiewright.standings..", "tiewright.draw..", "tiewright.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tiewright.desk..", "tiewright.setup..");

    @ArchTest
    static final ArchRule the_correction_knows_only_what_it_looks_at = noClasses()
            .that()
            .resideInAPackage("tiewright.correction..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.rating..",
                    "tiewright.ledger..",
                    "tiewright.plainfiles..");

    @ArchTest
    static final ArchRule no_room_below_knows_the_correction = noClasses()
            .that()
            .resideInAnyPackage("tiewright.event..", "tiewright.standings..", "tiewright.draw..", "tiewright.sheet..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tiewright.correction..");

    @ArchTest
    static final ArchRule the_desk_does_not_know_the_set_up = noClasses()
            .that()
            .resideInAPackage("tiewright.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tiewright.setup..", "tiewright.lineup..", "tiewright.rating..");

    @ArchTest
    static final ArchRule the_timetable_knows_the_event_and_the_draw = noClasses()
            .that()
            .resideInAPackage("tiewright.timetable..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.standings..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.rating..",
                    "tiewright.ledger..",
                    "tiewright.plainfiles..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..");

    @ArchTest
    static final ArchRule the_rating_knows_the_event_and_below = noClasses()
            .that()
            .resideInAPackage("tiewright.rating..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.wording..",
                    "tiewright.plainfiles..",
                    "tiewright.ledger..",
                    "tiewright.http..",
                    "tiewright.cli..",
                    "io.javalin..",
                    "org.jooq..",
                    "org.h2..",
                    "tiewright.schema..",
                    "java.sql..");

    @ArchTest
    static final ArchRule film_knows_the_rating_the_event_and_below = classes()
            .that()
            .resideInAPackage("tiewright.film..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.film..",
                    "tiewright.rating..",
                    "tiewright.event..",
                    "tiewright.conditions..",
                    "tiewright.scoring..",
                    "org.hipparchus..",
                    "org.jspecify..",
                    "java.lang..",
                    "java.util..",
                    "java.time..");

    @ArchTest
    static final ArchRule no_room_below_or_beside_knows_the_film = noClasses()
            .that()
            .resideInAnyPackage(
                    "tiewright.scoring..",
                    "tiewright.conditions..",
                    "tiewright.event..",
                    "tiewright.rating..",
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.correction..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.timetable..",
                    "tiewright.ledger..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tiewright.film..");

    @ArchTest
    static final ArchRule the_clock_knows_no_other_room = classes()
            .that()
            .resideInAPackage("tiewright.clock..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("tiewright.clock..", "org.jspecify..", "java..");

    @ArchTest
    static final ArchRule a_search_knows_no_other_room = classes()
            .that()
            .resideInAPackage("tiewright.search..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("tiewright.search..", "org.optaplanner..", "org.jspecify..", "java..");

    @ArchTest
    static final ArchRule only_searches_know_the_solver = noClasses()
            .that()
            .resideOutsideOfPackages("tiewright.search..", "tiewright.lineup..", "tiewright.timetable..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.optaplanner..");

    @ArchTest
    static final ArchRule only_the_ledger_knows_the_database = noClasses()
            .that()
            .resideOutsideOfPackages("tiewright.ledger..", "tiewright.schema..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jooq..", "org.h2..", "org.flywaydb..", "tiewright.schema..", "java.sql..");

    @ArchTest
    static final ArchRule the_ledger_knows_no_room_but_the_event = noClasses()
            .that()
            .resideInAPackage("tiewright.ledger..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "tiewright.standings..",
                    "tiewright.draw..",
                    "tiewright.sheet..",
                    "tiewright.desk..",
                    "tiewright.setup..",
                    "tiewright.lineup..",
                    "tiewright.rating..",
                    "tiewright.plainfiles..",
                    "tiewright.wording..",
                    "tiewright.http..",
                    "tiewright.cli..");

    /**
     * Pages are made from what one viewer may know. The whole event is held by the answers, which look for whom they are, by the
     * service itself, which follows it, and by decisions, to which it is given.
     */
    @ArchTest
    static final ArchRule pages_never_hold_the_whole_event = noClasses()
            .that()
            .resideInAPackage("tiewright.http..")
            .and()
            .resideOutsideOfPackages("tiewright.http", "tiewright.http.answers")
            .and()
            .areNotAssignableTo(tiewright.event.Decision.class)
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("tiewright.event.Event");

    private static final String[] ROOMS_OF_PAGES = {
        "tiewright.http.everybody..",
        "tiewright.http.captain..",
        "tiewright.http.film..",
        "tiewright.http.desk..",
        "tiewright.http.rulings..",
        "tiewright.http.plan..",
        "tiewright.http.organiser.."
    };

    @ArchTest
    static final ArchRule a_room_of_pages_knows_no_other = slices().matching(
                    "tiewright.http.(everybody|captain|film|desk|rulings|plan|organiser)..")
            .should()
            .notDependOnEachOther();

    @ArchTest
    static final ArchRule pages_do_not_know_the_service = noClasses()
            .that()
            .resideInAPackage("tiewright.http.*..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("tiewright.http");

    @ArchTest
    static final ArchRule the_kit_knows_no_page = noClasses()
            .that()
            .resideInAnyPackage("tiewright.http.visit..", "tiewright.http.answers..", "tiewright.http.views..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(ROOMS_OF_PAGES);

    @ArchTest
    static final ArchRule answers_know_no_kit_and_no_view = noClasses()
            .that()
            .resideInAPackage("tiewright.http.answers..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tiewright.http.visit..", "tiewright.http.views..", "tiewright.http.pieces..");
}
