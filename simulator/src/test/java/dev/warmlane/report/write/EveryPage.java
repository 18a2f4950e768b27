package dev.warmlane.report.write;

import dev.warmlane.fit.FittedPool;
import dev.warmlane.fit.InventedLog;
import dev.warmlane.report.FitReport;
import dev.warmlane.report.Report;
import dev.warmlane.report.SampleReports;
import dev.warmlane.report.SampleStudies;
import dev.warmlane.scenario.Letterhead;
import dev.warmlane.scenario.Logo;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.imageio.ImageIO;

/**
 * Every kind of page of every example scenario: in its own units, and in the other ones with a long title below a large
 * letterhead; and a few of seasons that have next to nothing to tell.
 */
final class EveryPage {

    /** Longer than a line of the first sheet. */
    private static final String LONG =
            "Heating the outdoor pool of the municipal bathing and sports grounds with unglazed"
                    + " collectors on the roofs of changing rooms and sports hall, second stage";

    private static final Letterhead LETTERHEAD = Letterhead.builder()
            .company("Invented Solar Pools and Sons, Planning and Installation")
            .contact("A. Sample, 1 Nowhere Street, 00000 Nowhere, +00 000 000 00 00, sample@example.org")
            .logo(new Logo("logo.png", "image/png", picture()))
            .preparedFor("the council of the invented town, department of sports")
            .offer("2026-0017, second version")
            .date("3 May 2026")
            .place("Nowhere-on-Sea, outdoor pool")
            .build();

    private static final Map<String, SampleStudies> EXAMPLES = Map.of(
            "municipal", SampleStudies.MUNICIPAL,
            "club", SampleStudies.CLUB,
            "southern", SampleStudies.SOUTHERN,
            "indoor", SampleStudies.INDOOR,
            "hotel", SampleStudies.HOTEL,
            "drawn", SampleStudies.DRAWN);

    private static final Map<String, Function<SampleStudies, Report>> KINDS = Map.of(
            "forecast", studies -> SampleReports.report(studies.described()),
            "mountings", SampleStudies::mountingReport,
            "areas", SampleStudies::areaReport,
            "sensitivity", SampleStudies::sensitivityReport,
            "years", SampleStudies::yearsReport,
            "dates", SampleStudies::datesReport);

    private EveryPage() {}

    /** The reports, each made when it is asked for. */
    static Map<String, Supplier<Report>> all() {
        Map<String, Supplier<Report>> pages = new LinkedHashMap<>();
        EXAMPLES.forEach((example, studies) -> {
            SampleStudies others = studies.in(otherwise(studies.units()));
            KINDS.forEach((kind, report) -> {
                pages.put(name(example, kind, studies.units()), () -> report.apply(studies));
                pages.put(name(example, kind, others.units()), () -> titled(report.apply(others)));
            });
        });
        FittedPool fit = InventedLog.fitted();
        ReportSettings usual = new ReportSettings("A pool and its log", UnitSystem.METRIC);
        ReportSettings other = otherwise(UnitSystem.METRIC);
        pages.put(name("log", "fit", usual.units()), () -> FitReport.of(fit, usual));
        pages.put(name("log", "fit", other.units()), () -> titled(FitReport.of(fit, other)));
        for (String odd : List.of("no collectors", "one day", "never open", "neither collectors nor heater")) {
            pages.put(odd, () -> SampleReports.report(SampleReports.odd(odd)));
        }
        return pages;
    }

    private static String name(String example, String kind, UnitSystem units) {
        return example + "-" + kind + "-" + units.name().toLowerCase(Locale.ROOT);
    }

    private static ReportSettings otherwise(UnitSystem units) {
        return new ReportSettings(LONG, units == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US, LETTERHEAD);
    }

    /** Studies are titled by their pool's name. */
    private static Report titled(Report report) {
        return new Report(
                report.name(),
                LONG,
                report.place(),
                report.letterhead(),
                report.notation(),
                report.sections(),
                report.data());
    }

    /** A black picture much wider than a page has room for. */
    private static String picture() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(1200, 300, BufferedImage.TYPE_BYTE_BINARY), "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }
}
