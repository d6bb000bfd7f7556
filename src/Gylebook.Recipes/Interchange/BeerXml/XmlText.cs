using System.Text;
using System.Xml;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange.OpenFormats;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>Records as the text of a BeerXML document: UTF-8, no attributes, one tag a value.</summary>
internal static class XmlText
{
    private static readonly XmlWriterSettings Settings = new() { Indent = true, IndentChars = "  ", NewLineChars = "\n", NewLineHandling = NewLineHandling.None, OmitXmlDeclaration = true };

    /// <summary>The text of a set.</summary>
    public static string Write(string set, IReadOnlyList<ObjectNode> records, TravelList travels)
    {
        StringBuilder text = new("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        using (XmlWriter writer = XmlWriter.Create(text, Settings))
        {
            Set(writer, set, records, travels);
        }

        return text.Append('\n').ToString();
    }

    private static void Set(XmlWriter writer, string set, IEnumerable<Node> records, TravelList travels)
    {
        writer.WriteStartElement(set);
        foreach (Node record in records)
        {
            Element(writer, BeerXmlTags.Sets[set], record, travels);
        }

        writer.WriteEndElement();
    }

    private static void Element(XmlWriter writer, string tag, Node value, TravelList travels)
    {
        switch (value)
        {
            case ListNode list:
                Set(writer, tag, list.Items, travels);
                break;
            case ObjectNode record:
                writer.WriteStartElement(tag);
                foreach ((string key, Node inner) in record.Pairs)
                {
                    Element(writer, key, inner, travels);
                }

                writer.WriteEndElement();
                break;
            default:
                writer.WriteElementString(tag, Legal(tag, value, travels));
                break;
        }
    }

    private static string Legal(string tag, Node value, TravelList travels)
    {
        string text = value switch { TextNode said => said.Text, BareNode { Written: "true" } => "TRUE", BareNode { Written: "false" } => "FALSE", BareNode bare => bare.Written, _ => "" };
        string legal = XmlRepair.Characters(text);
        if (legal.Length < text.Length)
        {
            travels.Repair(tag, "characters that XML has not are taken out");
        }

        return legal;
    }
}
