package counterbench.sheets.poi;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Parses the XML of workbooks: no document types, and so no entities from anywhere. */
final class Xml {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

    private Xml() {}

    static void parse(InputStream in, DefaultHandler handler) throws IOException, SAXException {
        XMLReader reader = reader();
        reader.setContentHandler(handler);
        reader.setErrorHandler(handler);
        reader.parse(new InputSource(new TagGuard(in)));
    }

    private static XMLReader reader() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(NO_DOCTYPE, true);
            return factory.newSAXParser().getXMLReader();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the XML parser cannot be made safe", e);
        }
    }
}
