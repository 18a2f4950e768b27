package dev.warmlane.report;

import dev.warmlane.report.chart.ForecastCharts;
import dev.warmlane.study.ShadeStudy;
import dev.warmlane.study.ShadeStudy.Loss;
import dev.warmlane.units.Measure;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What horizon, obstacles, parapets and whatever stands beside the pool take away. */
final class ShadeSection {

    /** Less than this of the sun is not worth a word on the first sheet; own choice. */
    private static final double TRIVIAL = 0.005;

    private static final String ASSUMED =
            "Everything in the way is taken as opaque: a bare tree or a fence takes less. What it hides of the sky gives no light"
                    + " back and is as warm as the air. The sky's light is even but for what comes from about the sun.";

    private static final String PARAPET =
            "A parapet also slows the wind behind it; how much at the collectors is not known well enough for a number. It is in"
                    + " the doubt of the forecast and not in its likely value; the wind along the roof can be given.";

    private final Subject subject;
    private final ShadeStudy study;
    private final Numbers numbers;
    private final boolean collectors;

    private ShadeSection(Subject subject, ShadeStudy study) {
        this.subject = subject;
        this.study = study;
        this.numbers = subject.numbers();
        this.collectors = !subject.installation().arrays().isEmpty();
    }

    /** The section; nothing in it where nothing is in the way. */
    static Section of(Subject subject, Optional<ShadeStudy> study) {
        Section section = Section.of("What shade costs", Place.EVERYWHERE);
        return study.map(found -> new ShadeSection(subject, found).filled(section))
                .orElse(section);
    }

    /** The season's loss in words alone. */
    static String sentence(Subject subject, ShadeStudy study) {
        return new ShadeSection(subject, study).sentence();
    }

    /** The months for csv. */
    static Table data(Subject subject, ShadeStudy study) {
        return new ShadeSection(subject, study).table();
    }

    private Section filled(Section section) {
        return section.words(sentence())
                .givingWay()
                .with(Place.DETAIL, table())
                .with(
                        Set.of(Place.TECHNICAL),
                        new Block.Picture(
                                "sky",
                                name -> Optional.of(ForecastCharts.sky(
                                        name, subject.settings().title(), study))))
                .with(Place.DETAIL, new Block.Words(hasParapet() ? ASSUMED + " " + PARAPET : ASSUMED));
    }

    private boolean hasParapet() {
        return subject.installation()
                .plan()
                .filter(plan -> plan.surfaces().stream().anyMatch(surface -> surface.parapetM() > 0))
                .isPresent();
    }

    private String sentence() {
        Loss season = study.season();
        boolean little = season.poolLight() < TRIVIAL && (!collectors || season.collectorsLight() < TRIVIAL);
        String taken = little
                ? "What stands around takes next to nothing of the season's sun"
                : "What stands around takes "
                        + (collectors
                                ? share(season.collectorsLight()) + " of the season's sun from the collectors and "
                                : "")
                        + share(season.poolLight()) + (collectors ? "" : " of the season's sun") + " from the pool";
        String pool = "With nothing in the way " + (collectors ? "of the pool's sun too " : "")
                + "the pool would average "
                + numbers.show(Measure.TEMPERATURE, season.open().water().meanC()) + " instead of "
                + numbers.show(Measure.TEMPERATURE, season.shaded().water().meanC()) + ".";
        String heat = "With nothing in the way of the collectors they would give "
                + numbers.show(
                        Measure.HEAT, season.openCollectors().collectors().deliveredKwh())
                + " instead of "
                + numbers.show(Measure.HEAT, season.shaded().collectors().deliveredKwh()) + ".";
        return taken + ". " + (collectors ? heat + " " : "") + pool;
    }

    private String share(double value) {
        return numbers.show(Measure.SHARE, value);
    }

    private Table table() {
        TableBuilder<Loss> table = new TableBuilder<Loss>(subject.units())
                .words("month", "month", loss -> numbers.label(loss.shaded().period()));
        if (collectors) {
            table.number("sun lost,\ncollectors", "collectors_sun_lost", Measure.SHARE, Loss::collectorsLight)
                    .number("heat\nlost", "heat_lost", Measure.SHARE, Loss::heat)
                    .number("\nheat", "heat", Measure.HEAT, loss -> loss.shaded()
                            .collectors()
                            .deliveredKwh())
                    .number("under\nopen sky", "heat_open", Measure.HEAT, loss -> loss.openCollectors()
                            .collectors()
                            .deliveredKwh());
        }
        return table.number("sun lost,\npool", "pool_sun_lost", Measure.SHARE, Loss::poolLight)
                .number("pool\nmean", "water_mean", Measure.TEMPERATURE, loss -> loss.shaded()
                        .water()
                        .meanC())
                .number("under\nopen sky", "water_mean_open", Measure.TEMPERATURE, loss -> loss.open()
                        .water()
                        .meanC())
                .build(study.months(), List.of(study.season()));
    }
}
