using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;

namespace Gylebook.Layering.Tests;

/// <summary>The rooms of a project, that is its namespaces, and which knows which: read from its assembly.</summary>
/// <param name="Project">The project.</param>
/// <param name="Known">By room, the rooms it knows, each with one example of why.</param>
internal sealed record Rooms(string Project, SortedDictionary<string, SortedDictionary<string, string>> Known)
{
    /// <summary>What the folder of the project itself is called here.</summary>
    private const string Hall = "(the project's own folder)";

    /// <summary>Reads a project that was built.</summary>
    public static Rooms Of(string project)
    {
        using PEReader file = new(File.OpenRead(House.AssemblyOf(project)));
        MetadataReader reader = file.GetMetadataReader();
        TypeTokens tokens = new(file);
        SortedDictionary<string, SortedDictionary<string, string>> known = new(StringComparer.Ordinal);
        foreach (TypeDefinitionHandle handle in reader.TypeDefinitions)
        {
            if (RoomOf(project, reader, handle) is not var (room, name))
            {
                continue;
            }

            SortedDictionary<string, string> knows = known.TryGetValue(room, out SortedDictionary<string, string>? already)
                ? already : known[room] = new(StringComparer.Ordinal);
            foreach (TypeDefinitionHandle used in tokens.Of(handle))
            {
                if (RoomOf(project, reader, used) is var (other, its) && other != room)
                {
                    knows.TryAdd(other, $"{name} uses {its}");
                }
            }
        }

        return new Rooms(project, known);
    }

    /// <summary>A way that leads back to where it began, with the reason for each step; null when all point one way.</summary>
    public string? Circle()
    {
        HashSet<string> done = [];
        foreach (string room in Known.Keys)
        {
            if (CircleFrom(room, [], done) is { } circle)
            {
                return circle;
            }
        }

        return null;
    }

    /// <summary>The rooms as text: those that know most come first, each with the rooms it knows, less those it knows through another.</summary>
    public string Drawing()
    {
        List<string> order = [];
        HashSet<string> seen = [];
        foreach (string room in Known.Keys)
        {
            Visit(room, seen, order);
        }

        order.Reverse();
        StringBuilder text = new();
        text.Append(Project).Append('\n');
        foreach (string room in order)
        {
            string[] direct = [.. Known[room].Keys.Where(to => !Known[room].Keys.Any(by => by != to && Reached(by).Contains(to)))];
            text.Append("  ").Append(room).Append(direct.Length == 0 ? "" : " → " + string.Join(", ", direct)).Append('\n');
        }

        return text.ToString();
    }

    private string? CircleFrom(string room, List<string> way, HashSet<string> done)
    {
        int begun = way.IndexOf(room);
        if (begun >= 0)
        {
            string[] steps = [.. way.Skip(begun), room];
            return $"{Project}: " + steps[0] + string.Concat(steps.Skip(1).Select((to, i) => $" → {to} ({Known[steps[i]][to]})"));
        }

        if (done.Contains(room))
        {
            return null;
        }

        string? circle = Known[room].Keys.Select(to => CircleFrom(to, [.. way, room], done)).FirstOrDefault(found => found is not null);
        done.Add(room);
        return circle;
    }

    private void Visit(string room, HashSet<string> seen, List<string> order)
    {
        if (seen.Add(room))
        {
            foreach (string to in Known[room].Keys)
            {
                Visit(to, seen, order);
            }

            order.Add(room);
        }
    }

    private HashSet<string> Reached(string from)
    {
        HashSet<string> seen = [];
        Visit(from, seen, []);
        return seen;
    }

    /// <summary>The room of a type we wrote, by the outermost type around it, and that type's name; null for what the compiler or a generator made.</summary>
    private static (string Room, string Type)? RoomOf(string project, MetadataReader reader, TypeDefinitionHandle handle)
    {
        TypeDefinition type = reader.GetTypeDefinition(handle);
        while (!type.GetDeclaringType().IsNil)
        {
            type = reader.GetTypeDefinition(type.GetDeclaringType());
        }

        (string space, string name) = (reader.GetString(type.Namespace), reader.GetString(type.Name));
        return name.Contains('<', StringComparison.Ordinal) ? null
            : space == project || (space.Length == 0 && name == "Program") ? (Hall, name)
            : space.StartsWith(project + ".", StringComparison.Ordinal) ? (space[(project.Length + 1)..].Replace('.', '/'), name)
            : null;
    }
}
