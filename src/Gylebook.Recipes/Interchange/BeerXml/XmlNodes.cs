using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml;
using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Interchange.OpenFormats;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>The elements of a BeerXML text as a node: a set is a list, a record an object, all else text.</summary>
/// <remarks>No document type, no entity of its own, no other file is ever read; nothing deeper than our own files may be.</remarks>
internal sealed partial class XmlNodes
{
    private const int DeepestNesting = 64;

    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        MaxCharactersInDocument = FileInHand.MostBytes,
        MaxCharactersFromEntities = FileInHand.MostBytes,
    };

    private readonly TravelList _travels;
    private readonly FindingList _findings;
    private bool _hasSmallLetters;

    private XmlNodes(TravelList travels, FindingList findings) => (_travels, _findings) = (travels, findings);

    /// <summary>Reads a text; what is broken is mended once, and told. Null, with a finding, when it is no XML even then.</summary>
    public static ObjectNode? Read(string text, TravelList travels, FindingList findings)
    {
        XmlNodes nodes = new(travels, findings);
        try
        {
            return nodes.Whole(text, isWrapped: false);
        }
        catch (XmlException broken) when (!HasDocumentType(text, findings))
        {
            TravelList mended = new();
            string repaired = XmlRepair.Of(text, mended);
            try
            {
                ObjectNode? whole = nodes.Whole(repaired, isWrapped: true);
                mended.All.ToList().ForEach(travel => travels.Repair(travel.Where, travel.Words));
                return whole;
            }
            catch (XmlException)
            {
                findings.Error("file.xml", "", Invariant($"line {broken.LineNumber}, column {broken.LinePosition}: the XML is broken: {Reason(broken)}"));
                return null;
            }
        }
        catch (XmlException)
        {
            return null;
        }
    }

    private static bool HasDocumentType(string text, FindingList findings)
    {
        bool hasOne = text.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase);
        if (hasOne)
        {
            findings.Error("xml.documentType", "", "the file brings a document type, which BeerXML has not; it is not read: such a file can name other files, and grow without end", "<!DOCTYPE", "none");
        }

        return hasOne;
    }

    private ObjectNode? Whole(string text, bool isWrapped)
    {
        using StringReader source = new(text);
        using XmlReader reader = XmlReader.Create(source, Settings);
        reader.MoveToContent();
        string tag = Tag(reader.LocalName);
        Node whole = Element(reader, isWrapped ? "" : tag);
        return _findings.HasErrors ? null : whole is ObjectNode sets && (isWrapped || !BeerXmlTags.SetOf.ContainsKey(tag)) ? sets : Node.Object((tag, whole));
    }

    /// <summary>An element and what is in it; the reader stands on its beginning, and after its end when it is done.</summary>
    private Node Element(XmlReader reader, string here)
    {
        string tag = Tag(reader.LocalName);
        if (reader.Depth >= DeepestNesting)
        {
            _findings.Error("file.depth", here, $"nested more than {DeepestNesting} deep", null, $"{DeepestNesting}");
            reader.Skip();
            return new TextNode("");
        }

        if (reader.HasAttributes)
        {
            _travels.Leave(here, $"{reader.AttributeCount.ToString(System.Globalization.CultureInfo.InvariantCulture)} attributes, \"{FindingList.Shorten(reader.GetAttribute(0))}\" …; BeerXML has none");
        }

        if (reader.IsEmptyElement)
        {
            reader.Read();
            return BeerXmlTags.Sets.ContainsKey(tag) ? ListNode.Empty : new TextNode("");
        }

        reader.Read();
        return BeerXmlTags.Sets.TryGetValue(tag, out string? record) ? Set(reader, here, record)
            : BeerXmlTags.Prose.Contains(tag) ? Prose(reader, here)
            : Record(reader, here);
    }

    private ListNode Set(XmlReader reader, string path, string record)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        while (Next(reader))
        {
            if (reader.NodeType != XmlNodeType.Element)
            {
                reader.Read();
            }
            else if (Tag(reader.LocalName) == record)
            {
                items.Add(Element(reader, Invariant($"{path}[{items.Count}]")));
            }
            else
            {
                _travels.Leave($"{path}.{FindingList.Shorten(reader.LocalName)}", $"not a {record}; no tag of the standard here");
                reader.Skip();
            }
        }

        reader.Read();
        return new ListNode(items.ToImmutable());
    }

    private Node Record(XmlReader reader, string path)
    {
        StringBuilder text = new();
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        var pairs = ImmutableArray.CreateBuilder<KeyValuePair<string, Node>>();
        while (Next(reader))
        {
            if (reader.NodeType != XmlNodeType.Element)
            {
                text.Append(IsText(reader) ? reader.Value : "");
                reader.Read();
                continue;
            }

            string tag = Tag(reader.LocalName);
            Node inner = Element(reader, path.Length == 0 ? FindingList.Shorten(tag) : $"{path}.{FindingList.Shorten(tag)}");
            if (seen.TryAdd(tag, pairs.Count))
            {
                pairs.Add(new(tag, inner));
            }
            else if (inner is ListNode more && pairs[seen[tag]].Value is ListNode first)
            {
                pairs[seen[tag]] = new(tag, first.With(items => items.AddRange(more.Items)));
            }
            else
            {
                _travels.Leave($"{path}.{FindingList.Shorten(tag)}", "it is there twice; the first is read");
            }
        }

        reader.Read();
        return pairs.Count > 0 ? new ObjectNode(pairs.ToImmutable()) : new TextNode(Plain(text.ToString().Trim(), path));
    }

    /// <summary>Text, whatever markup somebody pasted into it.</summary>
    private TextNode Prose(XmlReader reader, string path)
    {
        StringBuilder text = new();
        bool hasMarkup = false;
        for (int open = 1; open > 0; reader.Read())
        {
            switch (reader.NodeType)
            {
                case XmlNodeType.Element:
                    hasMarkup = true;
                    open += reader.IsEmptyElement ? 0 : 1;
                    break;
                case XmlNodeType.EndElement:
                    open--;
                    break;
                default:
                    text.Append(IsText(reader) ? reader.Value : "");
                    break;
            }
        }

        if (hasMarkup)
        {
            _travels.Repair(path, "markup in a text; its words are kept");
        }

        return new TextNode(Plain(text.ToString().Trim('\r', '\n', ' ', '\t').ReplaceLineEndings("\n"), path));
    }

    /// <summary>A text that was escaped twice as it was meant.</summary>
    private string Plain(string text, string path)
    {
        if (!Escaped().IsMatch(text))
        {
            return text;
        }

        string plain = WebUtility.HtmlDecode(text);
        _travels.Repair(path, $"\"{FindingList.Shorten(text)}\" is escaped twice; read as \"{FindingList.Shorten(plain)}\"");
        return plain;
    }

    private string Tag(string name)
    {
        string tag = name.ToUpperInvariant();
        if (tag != name && !_hasSmallLetters)
        {
            _hasSmallLetters = true;
            _travels.Repair("", $"tags in small letters, <{FindingList.Shorten(name)}> …; read as in capitals");
        }

        return tag;
    }

    private static bool Next(XmlReader reader) => !reader.EOF && reader.NodeType != XmlNodeType.EndElement;

    private static bool IsText(XmlReader reader) => reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace;

    private static string Reason(XmlException broken)
    {
        int end = broken.Message.IndexOf(" Line ", StringComparison.Ordinal);
        return FindingList.Shorten(end < 0 ? broken.Message : broken.Message[..end]).TrimEnd('.');
    }

    [GeneratedRegex("&(amp|lt|gt|quot|apos|#[0-9]{1,7});")]
    private static partial Regex Escaped();
}
