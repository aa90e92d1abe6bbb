using Bunit;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Hosting;
using Practice.Web.Features.Gallery;

namespace Practice.Web.Tests.Parts;

/// <summary>What must hold of every part, held on the page that shows them all.</summary>
public class GalleryTests : BunitContext
{
    private readonly IRenderedComponent<GalleryPage> gallery;

    public GalleryTests()
    {
        Services.AddSingleton<IHostEnvironment>(new Development());
        gallery = Render<GalleryPage>();
    }

    [Fact]
    public void Every_drawing_is_decoration_or_says_in_a_sentence_what_it_shows()
    {
        var drawings = gallery
            .FindAll("svg")
            .Where(s => s.ParentElement!.LocalName != "svg")
            .ToList();
        Assert.NotEmpty(drawings);
        Assert.All(
            drawings,
            svg =>
                Assert.True(
                    svg.GetAttribute("aria-hidden") == "true"
                        || (
                            svg.GetAttribute("role") == "img"
                            && svg.GetAttribute("aria-label")?.Length > 10
                        )
                )
        );
    }

    [Fact]
    public void Every_button_says_what_it_does() =>
        Assert.All(
            gallery.FindAll("button"),
            b => Assert.NotEqual("", (b.GetAttribute("aria-label") ?? b.TextContent).Trim())
        );

    [Fact]
    public void No_button_sends_a_form_by_accident() =>
        Assert.All(gallery.FindAll("button"), b => Assert.Equal("button", b.GetAttribute("type")));

    [Fact]
    public void No_id_is_given_twice() =>
        Assert.Distinct(gallery.FindAll("[id]").Select(e => e.Id));

    private sealed class Development : IHostEnvironment
    {
        public string EnvironmentName { get; set; } = "Development";
        public string ApplicationName { get; set; } = "";
        public string ContentRootPath { get; set; } = "";
        public IFileProvider ContentRootFileProvider { get; set; } = new NullFileProvider();
    }
}
