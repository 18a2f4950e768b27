package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.units.Measure;
import dev.warmlane.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** What more and less area does, in sentences, and one of the areas in a few large numbers. */
final class AreaAnswer {

    private final AreaStudy study;
    private final Numbers numbers;

    AreaAnswer(AreaStudy study, UnitSystem units) {
        this.study = study;
        this.numbers = new Numbers(units);
    }

    Section section() {
        return CommonSections.answer(numbers, study.designs().stream().map(AreaDesign::season), sentences(), figures());
    }

    /** The answer in a few sentences; which area is right is not for the study to say. */
    String sentences() {
        AreaDesign smallest = study.designs().get(0);
        AreaDesign largest = study.designs().get(study.designs().size() - 1);
        PeriodSummary season = smallest.season();
        StringBuilder text = new StringBuilder();
        if (smallest.equals(largest)) {
            text.append("With ").append(area(smallest)).append(" the collectors deliver ");
            text.append(heat(smallest))
                    .append(" in the season, the pool averages ")
                    .append(mean(smallest));
            text.append(" and is at ").append(comfort()).append(" or above on ").append(days(smallest));
        } else {
            text.append("From ").append(area(smallest)).append(" to ").append(area(largest));
            text.append(" of collectors the heat delivered in the season goes from ")
                    .append(heat(smallest));
            text.append(" to ")
                    .append(heat(largest))
                    .append(", the pool's mean from ")
                    .append(mean(smallest));
            text.append(" to ")
                    .append(mean(largest))
                    .append(" and the days at ")
                    .append(comfort());
            text.append(" or above from ").append(days(smallest)).append(" to ").append(days(largest));
        }
        text.append(" of ").append(season.comfort().openDays());
        text.append(" days; without collectors it is ")
                .append(numbers.show(Measure.TEMPERATURE, season.waterWithout().meanC()));
        text.append(" and ").append(season.comfortWithout().daysAtComfort()).append(" days.");
        text.append(
                smallest.equals(largest)
                        ? " Each further " + numbers.unitOfArea() + " adds " + next(smallest) + "."
                        : " What each further " + numbers.unitOfArea() + " adds goes from " + next(smallest) + " to "
                                + next(largest) + ".");
        study.roofLimitM2().ifPresent(limit -> text.append(" Laid out like this the roof holds ")
                .append(numbers.show(Measure.AREA, limit))
                .append('.'));
        return text.append(" Which area is right depends on prices, the roof and what the bathers want.")
                .toString();
    }

    /** The large numbers of the area described, or else of the largest that fits the roof, or else of the smallest. */
    List<Figure> figures() {
        AreaDesign shown = shown();
        String with = " with " + area(shown) + (shown.asDescribed() ? ", as planned" : "");
        PeriodSummary season = shown.season();
        List<Figure> keys = new ArrayList<>();
        keys.add(new Figure(
                numbers.show(Measure.TEMPERATURE, season.water().meanC()),
                "mean pool temperature" + with,
                numbers.show(Measure.TEMPERATURE, season.waterWithout().meanC()) + " without collectors"));
        keys.add(new Figure(
                days(shown) + (season.comfort().daysAtComfort() == 1 ? " day" : " days"),
                "at " + comfort() + " or above",
                season.comfortWithout().daysAtComfort() + " without collectors"));
        keys.add(new Figure(
                heat(shown),
                "heat from the collectors",
                numbers.show(Measure.HEAT_PER_AREA, season.balance().deliveredKwh() / shown.areaM2())));
        keys.add(new Figure(
                next(shown),
                "heat that each further " + numbers.unitOfArea() + " adds",
                shown.fitsRoof() ? "" : "there is no room for it on the roof"));
        season.gas()
                .displaced()
                .ifPresent(gas -> keys.add(new Figure(
                        numbers.show(Measure.HEAT, gas.replacedKwh()),
                        FuelWords.of(season).wordDisplaced(),
                        shown.next().displacedKwhPerM2().stream()
                                .mapToObj(more ->
                                        numbers.show(Measure.HEAT_PER_AREA, more) + " that each further one adds")
                                .findFirst()
                                .orElse(""))));
        return keys;
    }

    private AreaDesign shown() {
        return study.designs().stream()
                .filter(AreaDesign::asDescribed)
                .findFirst()
                .orElseGet(() -> study.designs().stream()
                        .filter(AreaDesign::fitsRoof)
                        .reduce((smaller, larger) -> larger)
                        .orElse(study.designs().get(0)));
    }

    private String comfort() {
        return numbers.show(Measure.TEMPERATURE, study.installation().comfortC());
    }

    private String area(AreaDesign design) {
        return numbers.show(Measure.AREA, design.areaM2());
    }

    private String heat(AreaDesign design) {
        return numbers.show(Measure.HEAT, design.season().balance().deliveredKwh());
    }

    private String mean(AreaDesign design) {
        return numbers.show(Measure.TEMPERATURE, design.season().water().meanC());
    }

    private String next(AreaDesign design) {
        return numbers.show(Measure.HEAT_PER_AREA, design.next().deliveredKwhPerM2());
    }

    private static int days(AreaDesign design) {
        return design.season().comfort().daysAtComfort();
    }
}
