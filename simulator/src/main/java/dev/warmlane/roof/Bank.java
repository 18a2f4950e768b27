package dev.warmlane.roof;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Panels side by side on one pair of headers, all of one length.
 *
 * @param row which row of banks it stands in, counted from 1
 * @param place what it takes of the surface, with its headers, seen square to the surface; its length runs along the
 *     headers
 * @param panels number of panels
 * @param panelLengthM length of a panel along its tubes, m, on racks up their slope
 * @param panelWidthM width of a panel, m
 * @param nearHeader share of the depth that the headers at the near end take
 * @param farHeader the same at the far end; 0 where there are none
 */
public record Bank(
        int row,
        Patch place,
        int panels,
        double panelLengthM,
        double panelWidthM,
        double nearHeader,
        double farHeader) {

    /** Collector area, m². */
    public double areaM2() {
        return panels * panelAreaM2();
    }

    /** Area of one panel, m². */
    public double panelAreaM2() {
        return panelLengthM * panelWidthM;
    }

    /** Length of the two headers together, m. */
    public double headersM() {
        return 2 * panels * panelWidthM;
    }

    /** Where its panels are, without headers. */
    public List<Patch> panelPatches() {
        return IntStream.range(0, panels)
                .mapToObj(i -> place.part(
                        i * panelWidthM,
                        nearHeader * place.depthM(),
                        panelWidthM,
                        (1 - nearHeader - farHeader) * place.depthM()))
                .toList();
    }

    /** Where all of its panels are together. */
    public Patch panelsPatch() {
        return place.part(
                0, nearHeader * place.depthM(), place.lengthM(), (1 - nearHeader - farHeader) * place.depthM());
    }

    /** Where its headers are: one strip, or one at each end. */
    public List<Patch> headerPatches() {
        double depth = place.depthM();
        Patch near = place.part(0, 0, place.lengthM(), nearHeader * depth);
        return farHeader == 0
                ? List.of(near)
                : List.of(near, place.part(0, (1 - farHeader) * depth, place.lengthM(), farHeader * depth));
    }

    /** The same bank of fewer panels, those farthest along taken away. */
    Bank withPanels(int fewer) {
        Patch shorter = new Patch(place.corner(), place.alongDeg(), fewer * panelWidthM, place.depthM());
        return new Bank(row, shorter, fewer, panelLengthM, panelWidthM, nearHeader, farHeader);
    }
}
