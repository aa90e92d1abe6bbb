using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Practice.Domain.Course;
using Practice.Domain.Races;
using Practice.Store.Sealing;

namespace Practice.Store.Courses;

internal sealed class CourseMapping : IEntityTypeConfiguration<RaceCourse>
{
    public void Configure(EntityTypeBuilder<RaceCourse> builder)
    {
        builder.ToTable("race_course");
        builder.HasTenantKey(c => c.PracticeId, c => c.RaceId);
        builder.HasVersion();
        builder.IsSealed(c => c.Sheet);
        builder
            .HasOne<Race>()
            .WithOne()
            .HasForeignKey<RaceCourse>(c => new { c.PracticeId, c.RaceId });
    }
}
