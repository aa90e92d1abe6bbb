using System.ComponentModel.DataAnnotations;

namespace Practice.Web.Features.Clients.Details;

/// <summary>A client's form with the first weighing on it.</summary>
public sealed class NewClientForm : ClientForm
{
    [Required(ErrorMessage = "This is needed: every target is computed from it.")]
    [Range(25, 300, ErrorMessage = "Between 25 and 300 kg.")]
    public decimal? MassKg { get; set; }
}
