using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;

namespace Practice.Domain.Tests.Handouts.Calendars;

/// <summary>
/// A reader of our own for what RFC 5545 demands of a file: line ends and folds (3.1), the grammar of a content line,
/// nesting (3.4), what each component must hold (3.6), escapes (3.3.11), and clock times resolved by the file's own zone
/// rules alone. It shares no code with the library that writes.
/// </summary>
internal sealed partial class StrictCalendar
{
    private StrictCalendar(Component root) => Root = root;

    public Component Root { get; }

    public IEnumerable<Component> Events => Root.Children.Where(c => c.Name == "VEVENT");

    public static StrictCalendar Read(string text)
    {
        Refuse(!text.EndsWith("\r\n", StringComparison.Ordinal), "The last line has no end.");
        var lines = text.Split("\r\n")[..^1];
        foreach (var line in lines)
        {
            Refuse(line.AsSpan().IndexOfAny('\r', '\n') >= 0, "A line ends in something else.");
            Refuse(Encoding.UTF8.GetByteCount(line) > 75, $"Longer than 75 octets: {line}");
        }
        var stack = new Stack<Component>();
        Component? root = null;
        foreach (var line in Unfolded(lines))
        {
            var property = Property.Of(line);
            switch (property.Name)
            {
                case "BEGIN":
                    var begun = new Component(property.Value);
                    if (stack.TryPeek(out var parent))
                        parent.Children.Add(begun);
                    else
                    {
                        Refuse(root is not null, "More than one calendar.");
                        root = begun;
                    }
                    stack.Push(begun);
                    break;
                case "END":
                    Refuse(
                        stack.Pop().Name != property.Value,
                        $"END:{property.Value} out of place."
                    );
                    break;
                default:
                    stack.Peek().Properties.Add(property);
                    break;
            }
        }
        Refuse(stack.Count > 0 || root is null, "A component is not closed.");
        var calendar = new StrictCalendar(root!);
        calendar.Check();
        return calendar;
    }

    /// <summary>When an event begins, by the rules the file carries.</summary>
    public Instant BeginOf(Component calendarEvent) => Resolve(calendarEvent["DTSTART"]);

    public Instant EndOf(Component calendarEvent) => Resolve(calendarEvent["DTEND"]);

    private Instant Resolve(Property time)
    {
        var local = LocalDateTimePattern
            .CreateWithInvariantCulture("uuuuMMdd'T'HHmmss")
            .Parse(time.Value)
            .Value;
        var zone = Root.Children.Single(c =>
            c.Name == "VTIMEZONE" && c["TZID"].Value == time.Parameters["TZID"]
        );
        // the observance in force is the one that began last, each by its own clock before the change
        var inForce = zone
            .Children.Select(o => (Begin: Local(o["DTSTART"].Value), Rule: o))
            .Where(o => o.Begin <= local)
            .MaxBy(o => o.Begin)
            .Rule;
        return local.WithOffset(OffsetOf(inForce["TZOFFSETTO"].Value)).ToInstant();
    }

    private void Check()
    {
        Refuse(Root.Name != "VCALENDAR", "No calendar.");
        Refuse(Root["VERSION"].Value != "2.0", "Another version.");
        Refuse(Root["PRODID"].Value.Length == 0, "Nobody made it.");
        foreach (var zone in Root.Children.Where(c => c.Name == "VTIMEZONE"))
        {
            _ = zone["TZID"];
            Refuse(zone.Children.Count == 0, "A zone without rules.");
            foreach (var observance in zone.Children)
            {
                Refuse(observance.Name is not ("STANDARD" or "DAYLIGHT"), observance.Name);
                _ = (
                    Local(observance["DTSTART"].Value),
                    OffsetOf(observance["TZOFFSETFROM"].Value)
                );
            }
        }
        foreach (var e in Events)
        {
            foreach (var needed in new[] { "UID", "DTSTAMP", "DTSTART" })
                _ = e[needed];
            Refuse(!e["DTSTAMP"].Value.EndsWith('Z'), "DTSTAMP is not UTC.");
            foreach (var alarm in e.Children)
                Refuse(
                    alarm.Name != "VALARM"
                        || alarm["ACTION"].Value != "DISPLAY"
                        || !NegativeDuration().IsMatch(alarm["TRIGGER"].Value)
                        || alarm["DESCRIPTION"].Value.Length == 0,
                    "No such alarm."
                );
        }
        var keys = Events.Select(e => e["UID"].Value).ToList();
        Refuse(keys.Distinct().Count() != keys.Count, "Two events have one key.");
    }

    private static LocalDateTime Local(string text) =>
        LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss").Parse(text).Value;

    private static Offset OffsetOf(string text) =>
        OffsetPattern.CreateWithInvariantCulture("+HHmm").Parse(text).Value;

    private static IEnumerable<string> Unfolded(IEnumerable<string> lines)
    {
        var whole = new StringBuilder();
        foreach (var line in lines)
        {
            if (line.StartsWith(' ') || line.StartsWith('\t'))
            {
                whole.Append(line.AsSpan(1));
                continue;
            }
            if (whole.Length > 0)
                yield return whole.ToString();
            whole.Clear().Append(line);
        }
        yield return whole.ToString();
    }

    private static void Refuse(bool wrong, string why)
    {
        if (wrong)
            throw new FormatException(why);
    }

    [GeneratedRegex(@"^-P(T\d+[HMS](\d+[MS])?|\d+[DW])$")]
    private static partial Regex NegativeDuration();

    internal sealed class Component(string name)
    {
        public string Name { get; } = name;
        public List<Property> Properties { get; } = [];
        public List<Component> Children { get; } = [];

        public Property this[string property] => Properties.Single(p => p.Name == property);

        public bool Has(string property) => Properties.Exists(p => p.Name == property);
    }

    internal sealed partial record Property(
        string Name,
        IReadOnlyDictionary<string, string> Parameters,
        string Value
    )
    {
        /// <summary>The value as text, its escapes undone; an escape that the standard does not know is refused.</summary>
        public string Text =>
            Escape()
                .Replace(
                    Value,
                    m =>
                        m.Value switch
                        {
                            @"\n" or @"\N" => "\n",
                            @"\\" or @"\;" or @"\," => m.Value[1..],
                            _ => throw new FormatException($"Escape {m.Value}"),
                        }
                );

        public static Property Of(string line)
        {
            var match = ContentLine().Match(line);
            Refuse(!match.Success, $"No content line: {line}");
            return new(
                match.Groups["name"].Value,
                match
                    .Groups["key"]
                    .Captures.Zip(
                        match.Groups["param"].Captures,
                        (k, v) => (k.Value, Value: v.Value.Trim('"'))
                    )
                    .ToDictionary(p => p.Item1, p => p.Value),
                match.Groups["value"].Value
            );
        }

        [GeneratedRegex(
            "^(?<name>[A-Z0-9-]+)(?:;(?<key>[A-Z0-9-]+)=(?<param>\"[^\"\\p{Cc}]*\"|[^\";:,\\p{Cc}]*))*:(?<value>[^\\p{Cc}]*)$"
        )]
        private static partial Regex ContentLine();

        [GeneratedRegex(@"\\.?")]
        private static partial Regex Escape();
    }
}
