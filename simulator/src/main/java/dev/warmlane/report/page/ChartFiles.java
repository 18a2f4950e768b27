package dev.warmlane.report.page;

import dev.warmlane.report.FileSet;
import dev.warmlane.report.chart.Chart;
import java.util.List;

/** Charts as files of their own. */
final class ChartFiles {

    private ChartFiles() {}

    static FileSet addTo(FileSet files, List<Chart> charts) {
        for (Chart chart : charts) {
            files.add("charts/" + chart.name() + ".png", chart.png());
            files.add("charts/" + chart.name() + ".svg", chart.svg());
        }
        return files;
    }
}
