package dev.warmlane.report.chart;

import java.awt.Graphics2D;

/** What can be drawn into a file; a pixel is 1/96 inch. */
abstract class Painted {

    /** The name of its files, without an ending. */
    public abstract String name();

    /** What it shows. */
    public abstract String title();

    /** Width of the picture. */
    public abstract int width();

    /** Height of the picture. */
    public abstract int height();

    /** The picture as PNG, for print. */
    public byte[] png() {
        return Png.of(this);
    }

    /** The picture as an SVG element, without the head of an XML file. */
    public String svg() {
        return Svg.of(this);
    }

    /** Dots of a PNG for each pixel. */
    abstract double dotsPerPixel();

    /** What an SVG says of its size on paper; empty where it is as wide as its place. */
    abstract String onPaper();

    abstract void paint(Graphics2D g);
}
