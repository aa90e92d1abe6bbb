using System.ComponentModel.DataAnnotations;

namespace Practice.Web.Parts;

/// <summary>A line of text that is a line of text: no line ends, nothing unseen that steers.</summary>
public sealed class NoControlCharactersAttribute : ValidationAttribute
{
    public NoControlCharactersAttribute()
        : base("There is an unseen character in it. Type it anew.") { }

    public override bool IsValid(object? value) =>
        value is not string text || !text.Any(char.IsControl);
}
