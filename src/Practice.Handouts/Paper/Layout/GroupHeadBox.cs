using Practice.Handouts.Blocks;

namespace Practice.Handouts.Paper.Layout;

/// <summary>The head of a group: time, name, a word to it.</summary>
internal sealed class GroupHeadBox
{
    private readonly Setting _setting;
    private readonly TextBox _lead;
    private readonly TextBox _title;
    private readonly TextBox? _note;

    public GroupHeadBox(GroupHead head, Setting setting, double width)
    {
        var type = setting.Type;
        _setting = setting;
        _lead = new(
            setting.Canvas,
            head.Lead,
            width,
            type.Cell with
            {
                Face = Face.Bold,
                IsFigure = true,
            }
        );
        _title = new(setting.Canvas, head.Title, width, type.Cell with { Face = Face.SemiBold });
        _note = head.Note.Length == 0 ? null : new(setting.Canvas, head.Note, width, type.Small);
    }

    public double Height => _lead.Height + _title.Height + (_note?.Height ?? 0);

    public void Draw(double x, double y)
    {
        var theme = _setting.Theme;
        _lead.Draw(x, y, Inks.Only(theme.Ink));
        Space(_lead, x, y);
        _title.Draw(x, y + _lead.Height, Inks.Only(theme.AccentText));
        Space(_title, x, y + _lead.Height);
        _note?.Draw(x, y + _lead.Height + _title.Height, Inks.Only(theme.Soft));
    }

    // keeps the lines of the head apart for those who hear or copy them
    private void Space(TextBox text, double x, double y) =>
        _setting.Canvas.Text(
            " ",
            x + text.UsedWidth,
            y + text.Height * 0.75,
            new(Face.Regular, 8),
            _setting.Theme.Ink
        );
}
