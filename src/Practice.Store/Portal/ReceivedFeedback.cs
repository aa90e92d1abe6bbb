using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;
using Practice.Domain.Rehearsals;

namespace Practice.Store.Portal;

/// <summary>That an entry of a phone was taken in. The phone names each entry, and sends it until it hears so.</summary>
internal sealed record ReceivedFeedback(Guid PracticeId, Guid RehearsalId, Guid Key, Instant At);

internal sealed class ReceivedFeedbackMapping : IEntityTypeConfiguration<ReceivedFeedback>
{
    public void Configure(EntityTypeBuilder<ReceivedFeedback> builder)
    {
        builder.ToTable("received_feedback");
        builder.HasKey(r => new
        {
            r.PracticeId,
            r.RehearsalId,
            r.Key,
        });
        builder
            .HasOne<Rehearsal>()
            .WithMany()
            .HasForeignKey(r => new { r.PracticeId, r.RehearsalId });
    }
}
