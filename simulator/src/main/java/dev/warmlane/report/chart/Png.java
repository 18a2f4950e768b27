package dev.warmlane.report.chart;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** A picture as PNG. */
final class Png {

    private static final double DOTS_PER_INCH = 300;
    private static final double INCH_MM = 25.4;

    private Png() {}

    static byte[] of(Painted chart) {
        BufferedImage image = new BufferedImage(
                (int) (chart.dotsPerPixel() * chart.width()),
                (int) (chart.dotsPerPixel() * chart.height()),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(chart.dotsPerPixel(), chart.dotsPerPixel());
            chart.paint(g);
        } finally {
            g.dispose();
        }
        try {
            return encoded(image);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] encoded(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam smallest = writer.getDefaultWriteParam();
            smallest.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            smallest.setCompressionQuality(0);
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), smallest);
            metadata.mergeTree("javax_imageio_1.0", resolution());
            writer.write(null, new IIOImage(image, null, metadata), smallest);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** The format calls it pixel size and, for PNG, takes dots per millimetre. */
    private static IIOMetadataNode resolution() {
        IIOMetadataNode dimension = new IIOMetadataNode("Dimension");
        for (String axis : new String[] {"HorizontalPixelSize", "VerticalPixelSize"}) {
            IIOMetadataNode size = new IIOMetadataNode(axis);
            size.setAttribute("value", Double.toString(DOTS_PER_INCH / INCH_MM));
            dimension.appendChild(size);
        }
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_1.0");
        root.appendChild(dimension);
        return root;
    }
}
