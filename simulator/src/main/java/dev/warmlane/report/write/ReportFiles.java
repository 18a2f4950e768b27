package dev.warmlane.report.write;

import dev.warmlane.files.FileSet;
import dev.warmlane.report.Block;
import dev.warmlane.report.Report;
import dev.warmlane.report.chart.Drawing;
import dev.warmlane.report.chart.RoofSheet;
import dev.warmlane.units.Notation;
import java.util.List;
import java.util.Optional;

/**
 * All files of a report: page, text, csv files and charts.
 *
 * @param files the files, to be written together
 * @param withoutCharts why there are no charts among them; nothing where there are
 */
public record ReportFiles(FileSet files, Optional<String> withoutCharts) {

    /** Makes the files; without charts where this machine cannot draw. */
    public static ReportFiles of(Report report) {
        return of(report, Drawing.missing());
    }

    static ReportFiles of(Report report, Optional<String> withoutCharts) {
        FileSet files = new FileSet()
                .add(report.name() + ".html", HtmlWriter.page(report, withoutCharts))
                .add(report.name() + ".txt", TextWriter.full(report));
        report.data()
                .forEach(data -> files.add(
                        data.name() + ".csv", CsvWriter.csv(data.table().get())));
        report.pictures().forEach(picture -> addTo(files, picture, withoutCharts.isEmpty(), report.notation()));
        report.plans().forEach(plan -> addTo(files, plan, withoutCharts.isEmpty()));
        return new ReportFiles(files, withoutCharts);
    }

    private static void addTo(FileSet files, Block.Plan plan, boolean drawn) {
        String png = "charts/" + plan.name() + ".png";
        String svg = "charts/" + plan.name() + ".svg";
        files.supersede(List.of(png, svg));
        if (drawn) {
            RoofSheet sheet = plan.draw().get();
            files.add(png, sheet.png()).add(svg, sheet.svg());
        }
    }

    /** A picture that an earlier run left beside an older page goes. */
    private static void addTo(FileSet files, Block.Picture picture, boolean drawn, Notation notation) {
        String png = "charts/" + picture.name() + ".png";
        String svg = "charts/" + picture.name() + ".svg";
        files.supersede(List.of(png, svg));
        if (drawn) {
            picture.chart().map(chart -> chart.in(notation)).ifPresent(chart -> files.add(png, chart.png())
                    .add(svg, chart.svg()));
        }
    }
}
