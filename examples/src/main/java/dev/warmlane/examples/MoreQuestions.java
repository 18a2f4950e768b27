package dev.warmlane.examples;

import java.util.List;
import java.util.Locale;

/** What is asked of those who want to say more, and taken as usual for the others. */
final class MoreQuestions {

    private static final String YES = "yes";
    private static final String NO = "no";

    private MoreQuestions() {}

    static List<Question> all() {
        return List.of(
                Question.own(
                                Questions.MORE,
                                "Bathers, opening hours, limits, pump, upkeep: be asked of these too (yes or no)",
                                "no takes what is usual, and the file says so beside each",
                                (written, before) -> gate(written))
                        .usually(NO)
                        .under("And the rest"),
                Question.key("pool.bathers", "Bathers in the water at once when it is full, 0 where nobody counts them")
                        .usually("0")
                        .without("people|persons|bathers|swimmers|guests")
                        .ifMore(),
                Question.key("season.open", "Hours in which it is open, " + Questions.WINTER_CLOCK)
                        .usually("8 am to 8 pm")
                        .ifMore(),
                Question.own(
                                "season.collectors_before",
                                "How many days before the first day may the collectors run",
                                "the water warms up for opening; 0 to 180",
                                (written, before) -> HeatQuestions.before(written, false))
                        .usually("7")
                        .when(before -> !HeatQuestions.heated(before) && !Questions.allYear(before))
                        .ifMore(),
                Question.key("control.limit", "Water temperature at which the collectors stop", Questions.TEMPERATURE)
                        .usually(Usual::limit)
                        .ifMore(),
                Question.key("season.comfort_maximum", "From which temperature is it too warm", Questions.TEMPERATURE)
                        .usually(Usual::limit)
                        .ifMore(),
                Question.key("roof.height", "Height of the roof above the ground", Questions.LENGTH)
                        .usually(before -> before.by("4 m", "13 ft"))
                        .ifMore(),
                Question.key("site.terrain", "What the wind crosses: city, suburban, open or water")
                        .usually("suburban")
                        .ifMore(),
                Question.key(
                                "pipes.pump_power",
                                "Electricity that the collectors need beyond the filter pump",
                                before -> "W")
                        .usually(Usual::pumpPower)
                        .saying("0 where the filter pump drives them too")
                        .ifMore(),
                Question.key("heater.efficiency", "Efficiency of the heater", before -> "%")
                        .usually(before -> Heaters.of(before).condenses() ? "96 %" : "82 %")
                        .when(before -> Heaters.of(before).burns())
                        .ifMore(),
                Question.key("heater.last_bill", "")
                        .asking(before ->
                                "What was bought for it last season, such as " + Usual.billSample(before) + ", or none")
                        .usually(Questions.NONE)
                        .or(Questions.NONE, "nothing is compared")
                        .when(HeatQuestions::heated)
                        .ifMore(),
                Question.key("money.upkeep", "Upkeep of the collectors, a year")
                        .usually(Usual::upkeep)
                        .without(
                                "(?:euros?|dollars?|pounds?|eur|usd|gbp|chf|[$\u20ac\u00a3])?\\s*(?:(?:a|per|each|/)\\s*(?:year|yr))?")
                        .when(HeatQuestions::priced)
                        .ifMore(),
                Question.key("money.cover_years", "Years that the cover lasts")
                        .usually(Usual::coverYears)
                        .without("years?")
                        .when(HeatQuestions::priced)
                        .ifMore());
    }

    /** Whether somebody wants to be asked. */
    static boolean wanted(Answers answers) {
        return answers.is(Questions.MORE, YES);
    }

    private static Answer gate(String written) {
        String said = written.strip().toLowerCase(Locale.ROOT);
        if (said.matches("y(es)?|more")) {
            return Answer.nothing(YES);
        }
        if (said.matches("no?")) {
            return Answer.nothing(NO);
        }
        throw new IllegalArgumentException("write yes or no");
    }
}
