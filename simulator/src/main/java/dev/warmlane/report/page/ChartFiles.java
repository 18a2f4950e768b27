package dev.warmlane.report.page;

import dev.warmlane.files.FileSet;
import dev.warmlane.report.chart.Chart;
import java.util.List;
import java.util.stream.Stream;

/** Charts as files of their own. */
final class ChartFiles {

    private ChartFiles() {}

    /**
     * Adds charts to a set.
     *
     * @param charts those that there are
     * @param names of all that an earlier run may have left beside an older page
     */
    static FileSet addTo(FileSet files, List<Chart> charts, List<String> names) {
        for (Chart chart : charts) {
            files.add(file(chart.name(), "png"), chart.png());
            files.add(file(chart.name(), "svg"), chart.svg());
        }
        return files.supersede(names.stream()
                .flatMap(name -> Stream.of(file(name, "png"), file(name, "svg")))
                .toList());
    }

    private static String file(String name, String ending) {
        return "charts/" + name + "." + ending;
    }
}
