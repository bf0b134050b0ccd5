package trimwright.report.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Date;
import java.util.HexFormat;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopConfParser;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.MimeConstants;
import org.apache.fop.apps.io.ResourceResolverFactory;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A sheet as PDF, set by way of formatting objects. */
public final class PdfSheet {

    /** The formatter wants a place from which to look for files; a sheet names none. */
    private static final URI NOWHERE = URI.create("file:///");
    /** The formatter takes its loggers by name; it talks of fonts that it does not need. */
    private static final Logger FORMATTER = Logger.getLogger("org.apache.fop");

    private static final Pattern CREATED = Pattern.compile("<xmp:CreateDate>([^<]*)<");
    private static final Pattern CHANGED = Pattern.compile("<xmp:MetadataDate>([^<]*)<");
    private static final Pattern IDENTITY = Pattern.compile("/ID \\[<(\\p{XDigit}{32})> <(\\p{XDigit}{32})>]");

    private PdfSheet() {}

    /**
     * The bytes of the PDF file; the same for the same sheet.
     *
     * @param made when it was made, as it says of itself
     */
    public static byte[] of(Sheet sheet, Sheet.Paper paper, Date made) {
        FORMATTER.setLevel(Level.SEVERE);
        PdfLetters letters = PdfLetters.of(sheet);
        String objects = FormattingObjects.of(letters.noted(sheet), paper, letters::shown, letters.families());
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try {
            FOUserAgent agent = factory(letters).newFOUserAgent();
            agent.setTitle(sheet.title() + ": trim sheet");
            agent.setCreationDate(made);
            agent.setProducer("Trimwright");
            agent.setAccessibility(true);
            Fop fop = agent.newFop(MimeConstants.MIME_PDF, pdf);
            SAXParserFactory parsers = SAXParserFactory.newDefaultInstance();
            parsers.setNamespaceAware(true);
            parsers.newSAXParser().parse(new InputSource(new StringReader(objects)), fop.getDefaultHandler());
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("the formatter refused our own document: " + e.getMessage(), e);
        }
        return settled(pdf.toByteArray());
    }

    /** The formatter puts the hour of printing into the file, and an identity made of it; here both follow from the sheet, so that the same sheet gives the same file. */
    private static byte[] settled(byte[] pdf) {
        String file = new String(pdf, StandardCharsets.ISO_8859_1);
        Matcher created = CREATED.matcher(file);
        Matcher changed = CHANGED.matcher(file);
        // Of equal length, so that the places of objects in the file stay right.
        if (created.find()
                && changed.find()
                && created.group(1).length() == changed.group(1).length()) {
            file = file.substring(0, changed.start(1)) + created.group(1) + file.substring(changed.end(1));
        }
        Matcher identity = IDENTITY.matcher(file);
        if (identity.find()) {
            String digest = digest(file.substring(0, identity.start()) + file.substring(identity.end()));
            file = file.substring(0, identity.start(1))
                    + digest
                    + file.substring(identity.end(1), identity.start(2))
                    + digest
                    + file.substring(identity.end(2));
        }
        return file.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** 128 bits as hexadecimal digits, as long as an identity is. */
    private static String digest(String file) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(file.getBytes(StandardCharsets.ISO_8859_1));
            return HexFormat.of().withUpperCase().formatHex(hash, 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static FopFactory factory(PdfLetters letters) throws SAXException, IOException {
        return new FopConfParser(
                        new ByteArrayInputStream(letters.configuration().getBytes(StandardCharsets.UTF_8)),
                        NOWHERE,
                        new OurFiles(ResourceResolverFactory.createDefaultResourceResolver()))
                .getFopFactoryBuilder()
                .build();
    }

    /** Hands the formatter the font that comes with the program; all else as usual. */
    private record OurFiles(ResourceResolver usual) implements ResourceResolver {

        @Override
        public Resource getResource(URI uri) throws IOException {
            if (uri.getPath() != null && uri.getPath().endsWith(PdfLetters.FONT_NAME)) {
                InputStream font = PdfLetters.font();
                return new Resource(font);
            }
            return usual.getResource(uri);
        }

        @Override
        public OutputStream getOutputStream(URI uri) throws IOException {
            return usual.getOutputStream(uri);
        }
    }
}
