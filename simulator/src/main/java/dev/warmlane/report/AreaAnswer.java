package dev.warmlane.report;

import dev.warmlane.report.Block.Figure;
import dev.warmlane.season.PeriodSummary;
import dev.warmlane.study.AreaDesign;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.AreaWorth;
import dev.warmlane.study.MoreArea;
import dev.warmlane.study.SeasonBands;
import dev.warmlane.units.Estimate;
import dev.warmlane.units.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What more and less area does, in sentences, and one of the areas in a few large numbers. */
final class AreaAnswer {

    private final AreaStudy study;
    private final Numbers numbers;
    private final Optional<AreaMoney> money;
    private final AreaDesign shown;
    private final BandWords band;
    private final MoreArea more;
    private final SeasonBands bands;
    private final boolean held;

    AreaAnswer(AreaStudy study, Optional<AreaWorth> worth, MoreArea more, Subject described) {
        this.study = study;
        this.numbers = described.numbers();
        this.money = worth.map(known -> new AreaMoney(known, described.numbers()));
        this.shown = shown(study);
        this.bands = described.bands();
        this.band = new BandWords(described, bands.of(shown.built()));
        this.more = more;
        this.held = Telling.heldByHeater(study.installation(), described.season());
    }

    Section section() {
        return CommonSections.answer(numbers, study.designs().stream().map(AreaDesign::season), sentences(), figures());
    }

    /** The answer in a few sentences: what money says, where it is known; which area is right is for the owner to say. */
    String sentences() {
        AreaDesign smallest = smallest();
        AreaDesign largest = largest();
        PeriodSummary season = smallest.season();
        StringBuilder text = new StringBuilder();
        if (smallest.equals(largest)) {
            text.append("With ").append(area(smallest)).append(" the collectors deliver ");
            text.append(heat(smallest))
                    .append(" in the season, the pool averages ")
                    .append(mean(smallest));
            if (!held) {
                text.append(" and is at ")
                        .append(comfort())
                        .append(" or above on ")
                        .append(days(smallest));
            }
        } else {
            text.append("From ").append(area(smallest)).append(" to ").append(area(largest));
            text.append(" of collectors the heat delivered in the season goes from ")
                    .append(heat(smallest));
            text.append(" to ")
                    .append(heat(largest))
                    .append(", the pool's mean from ")
                    .append(mean(smallest));
            text.append(" to ").append(mean(largest));
            if (!held) {
                text.append(" and the days at ").append(comfort()).append(" or above from ");
                text.append(days(smallest)).append(" to ").append(days(largest));
            }
        }
        if (!held) {
            text.append(" of ").append(season.comfort().openDays()).append(" days");
        }
        text.append('.');
        text.append(Telling.hardlyNeeded(study.installation(), season));
        text.append(
                smallest.equals(largest)
                        ? " Each further " + numbers.unitOfArea() + " adds " + nextInRange(smallest) + "."
                        : " What each further " + numbers.unitOfArea() + " adds goes from " + nextInRange(smallest)
                                + " to " + nextInRange(largest) + ".");
        study.roofLimitM2().ifPresent(limit -> text.append(" Laid out like this the roof holds ")
                .append(numbers.show(Measure.AREA, limit))
                .append('.'));
        return text.append(money.map(AreaMoney::sentences).orElse(""))
                .append(
                        money.isPresent()
                                ? " What the bathers want may speak for another."
                                : " Which area is right depends on prices, the roof and what the bathers want.")
                .toString();
    }

    /** The large numbers of the area described, or else of the largest that fits the roof, or else of the smallest. */
    List<Figure> figures() {
        String with = " with " + area(shown) + (shown.asDescribed() ? ", as planned" : "");
        PeriodSummary season = shown.season();
        List<Figure> keys = new ArrayList<>();
        keys.add(new Figure(
                band.likely(BandQuantity.MEAN),
                "mean pool temperature" + with,
                band.beside(BandQuantity.MEAN),
                numbers.show(Measure.TEMPERATURE, season.waterWithout().meanC()) + " without collectors"));
        if (!held) {
            keys.add(new Figure(
                    days(shown) + (days(shown) == 1 ? " day" : " days"),
                    "at " + comfort() + " or above",
                    band.beside(BandQuantity.days(season)),
                    season.comfortWithout().daysAtComfort() + " without collectors"));
        }
        BandQuantity heat = BandQuantity.HEAT.said(season);
        keys.add(new Figure(
                band.likely(heat),
                heat.words(),
                band.beside(heat),
                numbers.show(Measure.HEAT_PER_AREA, season.balance().deliveredKwh() / shown.areaM2())));
        keys.add(money.map(AreaMoney::figure)
                .orElseGet(() -> new Figure(
                        next(shown),
                        "heat that each further " + numbers.unitOfArea() + " adds",
                        bounds(shown),
                        shown.fitsRoof() ? "" : "there is no room for it on the roof")));
        if (season.gas().displaced().isPresent()) {
            BandQuantity displaced = BandQuantity.DISPLACED.said(season);
            keys.add(new Figure(band.likely(displaced), displaced.words(), band.beside(displaced), ""));
        }
        return keys;
    }

    private static AreaDesign shown(AreaStudy study) {
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
        return numbers.about(Measure.HEAT, design.season().balance().deliveredKwh());
    }

    private String mean(AreaDesign design) {
        return numbers.show(Measure.TEMPERATURE, design.season().water().meanC());
    }

    private String next(AreaDesign design) {
        Estimate next = added(design);
        return numbers.about(Measure.HEAT_PER_AREA, next.likely(), next);
    }

    /** With its range: {@code 120 kWh/m² (91 to 150)}. */
    private String nextInRange(AreaDesign design) {
        String bounds = bounds(design);
        return next(design) + (bounds.isEmpty() ? "" : " (" + bounds + ")");
    }

    private String bounds(AreaDesign design) {
        return numbers.bounds(Measure.HEAT_PER_AREA, added(design));
    }

    private Estimate added(AreaDesign design) {
        return more.of(design).orElseGet(() -> bands.nextKwhPerM2(design));
    }

    private AreaDesign smallest() {
        return study.designs().get(0);
    }

    private AreaDesign largest() {
        return study.designs().get(study.designs().size() - 1);
    }

    private static int days(AreaDesign design) {
        return design.season().comfort().daysAtComfort();
    }
}
